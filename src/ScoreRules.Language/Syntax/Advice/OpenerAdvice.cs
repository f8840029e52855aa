using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>is at leats 3</c>, <c>is above 90 s</c>: the words were read as a name, so the line fails only behind them.</summary>
internal static class OpenerAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Index == 0)
        {
            return null;
        }

        var verb = line.Tokens.FindLastIndex(line.Index - 1, token => token.Kind is TokenKind.Is or TokenKind.Has);
        if (verb < 0 || verb + 1 >= line.Index || !line.IsCondition)
        {
            return null;
        }

        var words = line.Tokens.Skip(verb + 1).Take(line.Index - verb - 1).Select(token => token.ToStringValue()).ToList();
        if (Openers.Meant(words, line.Tokens[verb].Kind == TokenKind.Has) is not { } found)
        {
            return null;
        }

        var place = line.SpanOf(verb + 1).Cover(line.SpanOf(verb + found.Words));
        return draft.Error("SR1002", $"\"{draft.Slice(place)}\" does not fit here", place, $"expected \"{found.Opener}\"", draft.Edit($"did you mean \"{found.Opener}\"?", place, found.Opener, EditSafety.Safe));
    }
}
