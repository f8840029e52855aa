using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Tests.Support;

/// <summary>Makes the edits that may be made without asking.</summary>
internal static class SafeEdits
{
    /// <summary>The first safe edit of each finding, from the end of the text to its beginning; of those that touch one another the first found.</summary>
    public static IReadOnlyList<TextEdit> Of(IEnumerable<Diagnostic> findings)
    {
        var edits = new List<TextEdit>();
        foreach (var finding in findings)
        {
            var edit = finding.Suggestions.FirstOrDefault(suggestion => suggestion is { Safety: EditSafety.Safe, Edit: not null })?.Edit;
            if (edit is not null && edits.TrueForAll(other => other.Location.Span.End < edit.Location.Span.Start || edit.Location.Span.End < other.Location.Span.Start))
            {
                edits.Add(edit);
            }
        }

        return [.. edits.OrderByDescending(edit => edit.Location.Span.Start)];
    }

    /// <summary>The text after the edits.</summary>
    public static string Apply(string text, IEnumerable<TextEdit> edits) =>
        edits.Aggregate(text, (soFar, edit) => soFar[..edit.Location.Span.Start] + edit.Replacement + soFar[edit.Location.Span.End..]);
}
