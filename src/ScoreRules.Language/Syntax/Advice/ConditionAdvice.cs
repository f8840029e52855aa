using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>give 4 points when complete stimulus</c>: a condition has its own line.</summary>
internal static class ConditionAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        var i = line.AtEnd ? -1 : line.Tokens.FindIndex(line.Index, token => token.Span.EqualsValueIgnoreCase("when") || token.Span.EqualsValueIgnoreCase("unless") || token.Kind == TokenKind.Because);
        if (i != line.Index || i == 0 || line.Spec.Starter is "when" or "and" or "or when" or "unless")
        {
            return null;
        }

        var word = line.Token.ToStringValue();
        var place = line.SpanOf(i);
        var gap = SourceSpan.FromBounds(line.SpanOf(i - 1).End, place.Start);
        return draft.Error("SR1014", $"\"{word}\" has a line of its own", place, "starts a new line", draft.Edit("start a new line here", gap, "\n  ", EditSafety.Safe));
    }
}
