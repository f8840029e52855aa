using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>from 0 to 4</c> below an attribute: a scale is told with "rated", "from" begins a day.</summary>
internal static class ScaleAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        var isRange = line.Spec.Starter is "from" or "until" && line.Tokens.Count == 3 && line.Index == 1 && line.Token.Span.EqualsValueIgnoreCase("to");
        if (!isRange)
        {
            return null;
        }

        var word = line.Line.Content with { Length = line.Spec.Starter.Length };
        return line.Within.StartsWith("attribute ", StringComparison.Ordinal)
            ? draft.Error("SR1002", $"\"{draft.Slice(word)}\" begins a day, and these are two numbers", word, "expected \"rated\"", draft.Edit("if it is a scale, write \"rated\"", word, "rated", EditSafety.Safe))
            : draft.Error("SR1002", $"\"{draft.Slice(word)}\" begins a day, and these are two numbers", line.SpanOf(0).Cover(line.SpanOf(2)), "", new Suggestion("write a day, such as \"from 4 May 2031\""));
    }
}
