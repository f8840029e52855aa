using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>found A is better than B</c>: how much better?</summary>
internal static class StrengthAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        var word = line.AtEnd ? "" : line.Token.ToStringValue();
        var strength = line.KindBefore() == TokenKind.Is && word is "better" or "more" && line.Expected.Any(expected => expected.Words == "a name");
        return strength
            ? draft.Error("SR1018", "How much? A word of the house stands here", line.SpanOf(line.Index), "no word before it", new Suggestion($"put one of your words in, such as \"clearly {word} ...\"; \"say clearly means at least 10 points\" defines it"))
            : null;
    }
}
