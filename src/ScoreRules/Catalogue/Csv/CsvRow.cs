using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>A row of a table.</summary>
/// <param name="Cells">Its cells; none when their quotes are at fault, which has been reported.</param>
/// <param name="Span">All of it, without the line end.</param>
internal sealed record CsvRow(ImmutableArray<CsvCell> Cells, SourceSpan Span)
{
    /// <summary>Whether it could not be cut into cells.</summary>
    public bool IsFaulty => Cells.IsEmpty;

    /// <summary>Whether it has cells and all are blank.</summary>
    public bool IsBlank => !IsFaulty && Cells.All(cell => cell.IsBlank);
}
