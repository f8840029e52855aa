using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>measured A is better than B by 3 points</c>: the number stands before "better than".</summary>
internal static class MeasuredAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Spec.Starter != "measured" || line.KindBefore() != TokenKind.Is || line.AtEnd || !line.Token.Span.EqualsValueIgnoreCase("better"))
        {
            return null;
        }

        const string Headline = "A measured difference stands before \"better than\"";
        var by = line.Tokens.FindLastIndex(token => token.Span.EqualsValueIgnoreCase("by"));
        if (by <= line.Index || by + 1 >= line.Tokens.Count || line.Tokens[by + 1].Kind != TokenKind.Number)
        {
            return draft.Error("SR1018", Headline, line.SpanOf(line.Index), "no number before it", new Suggestion("write for example \"is 9 points give or take 3 points better than\"; a result in words is told with \"found\""));
        }

        var last = EndOfAmount(line, by);
        var better = SourceSpan.FromBounds(line.SpanOf(line.Index).Start, line.SpanOf(by - 1).End);
        var amount = SourceSpan.FromBounds(line.SpanOf(by + 1).Start, line.SpanOf(last).End);
        return draft.Error("SR1018", Headline, amount, "stands behind it", draft.Edit("move it", better.Cover(amount), $"{draft.Slice(amount)} {draft.Slice(better)}", EditSafety.Safe));
    }

    // Regions may follow: "by 3 points for biceps".
    private static int EndOfAmount(FailedLine line, int by)
    {
        var end = line.Tokens.FindIndex(by, token => token.Kind == TokenKind.For);
        return (end < 0 ? line.Tokens.Count : end) - 1;
    }
}
