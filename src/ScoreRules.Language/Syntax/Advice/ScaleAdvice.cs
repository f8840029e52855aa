using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>from 0 to 4</c> below an attribute: "from" begins a day, and a scale is told with "rated".</summary>
internal static class ScaleAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        var isScale = line.Spec.Starter == "from" && line.Tokens.Count == 3 && line.Tokens[0].Kind == TokenKind.Number && line.Tokens[1].Span.EqualsValueIgnoreCase("to") && line.Tokens[2].Kind == TokenKind.Number;
        if (!isScale)
        {
            return null;
        }

        var starter = line.Line.Content with { Length = line.Spec.Starter.Length };
        return line.Within.StartsWith("attribute", StringComparison.Ordinal)
            ? draft.Error("SR1002", "\"from\" begins a day, not a scale", starter, "expected \"rated\"", draft.Edit("write \"rated\"", starter, "rated", EditSafety.Safe))
            : draft.Error("SR1002", "\"from\" begins a day", line.SpanOf(0).Cover(line.SpanOf(2)), "no day", new Suggestion("write a day, such as \"from 4 May 2031\""));
    }
}
