using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>The sentences for lines that no special case knows.</summary>
internal static class GeneralAdvice
{
    /// <summary>The line stopped too early.</summary>
    public static Diagnostic? Missing(AdviceDraft draft, FailedLine line) =>
        line.AtEnd
            ? draft.Error("SR1001", $"The line stops too early: {draft.Choices()} is missing", line.End, "here", new Suggestion($"go on with {draft.Choices()}"))
            : null;

    /// <summary>Something stands where it does not fit.</summary>
    public static Diagnostic? DoesNotFit(AdviceDraft draft, FailedLine line)
    {
        var place = line.SpanOf(line.Index);
        var written = draft.Slice(place);
        if (line.Expected.All(expectation => expectation.Words == FurthestFailure.EndOfLine.Words))
        {
            return draft.Error("SR1002", $"\"{written}\" does not fit here", place, "the line is complete before this", new Suggestion(line.Index == 0
                ? $"\"{line.Spec.Starter}\" stands alone in its line: take the rest out, or start a new line with it"
                : "take it out, or start a new line with it"));
        }

        return draft.Error("SR1002", $"\"{written}\" does not fit here", place, "", new Suggestion($"here the line could go on with {draft.Choices()}"));
    }
}
