using System.Buffers;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Edits inside a cell.</summary>
internal static class CellEdit
{
    private static readonly SearchValues<char> Special = SearchValues.Create(";,|\t\"\r\n");

    /// <summary>Advice with the edit that does it; without one where the new text would need quotes that a cell's part cannot have.</summary>
    public static Suggestion Replace(string advice, SourceLocation place, string replacement, EditSafety safety) =>
        replacement.AsSpan().ContainsAny(Special) ? new Suggestion(advice) : new Suggestion(advice, new TextEdit(place, replacement), safety);
}
