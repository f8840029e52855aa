using System.Collections.Immutable;
using System.Text;

namespace ScoreRules.Language.Diagnostics;

/// <summary>Makes edits in a text.</summary>
public static class TextEdits
{
    /// <summary>
    /// Those of some edits in one text that can be made together, in the order of their places. Of two that touch the same
    /// characters, or insert at the same place, the first in the order given stays; the other has to wait.
    /// </summary>
    public static ImmutableArray<T> Compatible<T>(IEnumerable<T> edits, Func<T, TextEdit> editOf)
    {
        var taken = new List<T>();
        foreach (var edit in edits)
        {
            if (taken.TrueForAll(other => !Clash(editOf(edit), editOf(other))))
            {
                taken.Add(edit);
            }
        }

        return [.. taken.OrderBy(edit => editOf(edit).Location.Span.Start)];
    }

    /// <summary>A text with compatible edits made in it.</summary>
    public static string Apply(string text, IEnumerable<TextEdit> edits)
    {
        var edited = new StringBuilder(text.Length);
        var at = 0;
        foreach (var edit in edits.OrderBy(edit => edit.Location.Span.Start))
        {
            edited.Append(text, at, edit.Location.Span.Start - at).Append(edit.Replacement);
            at = edit.Location.Span.End;
        }

        return edited.Append(text, at, text.Length - at).ToString();
    }

    private static bool Clash(TextEdit left, TextEdit right)
    {
        var (first, second) = left.Location.Span.Start <= right.Location.Span.Start ? (left.Location.Span, right.Location.Span) : (right.Location.Span, left.Location.Span);
        var inserts = first.Length == 0 || second.Length == 0;
        return inserts ? second.Start <= first.End : second.Start < first.End;
    }
}
