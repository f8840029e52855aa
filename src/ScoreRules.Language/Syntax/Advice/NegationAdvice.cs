using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>is not pronated</c>, <c>when not long-loaded</c>: the language says it the other way round.</summary>
internal static class NegationAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Token.Kind != TokenKind.Not)
        {
            return null;
        }

        var place = line.SpanOf(line.Index);
        return line.KindBefore() switch
        {
            TokenKind.Is => AfterIs(draft, line, place),
            TokenKind.Has => draft.Error("SR1011", "Say it the other way round: \"has none of\"", place, "", draft.Edit("write \"none of\"", place, "none of", EditSafety.Safe)),
            _ => BeforeName(draft, line, place),
        };
    }

    private static Diagnostic AfterIs(AdviceDraft draft, FailedLine line, SourceSpan place)
    {
        var next = line.Index + 1 < line.Tokens.Count ? line.Tokens[line.Index + 1].ToStringValue() : "";
        var (oneOf, atLeast) = (next.Equals("one", StringComparison.OrdinalIgnoreCase), next.Equals("at", StringComparison.OrdinalIgnoreCase));
        if (oneOf || atLeast)
        {
            var words = oneOf ? "none of" : "less than or more than";
            return draft.Error("SR1011", $"Say it the other way round: \"is {words}\"", place, "", new Suggestion($"write \"is {words}\" instead of \"is not {next} ...\""));
        }

        return draft.Error("SR1011", "Say it the other way round: \"is other than\"", place, "", draft.Edit("write \"other than\"", place, "other than", EditSafety.Safe));
    }

    private static Diagnostic BeforeName(AdviceDraft draft, FailedLine line, SourceSpan place)
    {
        var whole = line.Index == 0 && line.Spec.Starter == "when" && line.Tokens.TrueForAll(token => token.Kind is TokenKind.Word or TokenKind.Not);
        if (!whole)
        {
            return draft.Error("SR1011", "\"not\" is not used here: a condition that must fail has a line \"unless\"", place, "", new Suggestion("take it out of this line and write a line of its own: \"unless ...\""));
        }

        var span = SourceSpan.FromBounds(line.Line.Content.Start, place.End);
        return draft.Error("SR1011", "Say it the other way round: \"unless\"", place, "", draft.Edit("write \"unless\"", span, "unless", EditSafety.Safe));
    }
}
