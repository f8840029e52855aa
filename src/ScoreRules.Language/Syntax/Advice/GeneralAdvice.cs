using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>The sentences for lines that no special case knows.</summary>
internal static class GeneralAdvice
{
    /// <summary>The line stopped too early.</summary>
    public static Diagnostic? Missing(AdviceDraft draft, FailedLine line) =>
        line.AtEnd
            ? Exemplified(draft.Error("SR1001", $"The line stops too early: {draft.Choices()} is missing", line.End, "here", new Suggestion($"go on with {draft.Choices()}")), line)
            : null;

    /// <summary>Something stands where it does not fit.</summary>
    public static Diagnostic? DoesNotFit(AdviceDraft draft, FailedLine line)
    {
        var place = line.SpanOf(line.Index);
        var written = draft.Slice(place);
        return Exemplified(draft.Error("SR1002", $"\"{written}\" does not fit here", place, "", new Suggestion($"here the line could go on with {draft.Choices()}")), line);
    }

    private static Diagnostic Exemplified(Diagnostic finding, FailedLine line) =>
        LineExamples.Of(line.Spec) is { } example ? finding with { Notes = [$"such a line reads, for example: {example}"] } : finding;
}
