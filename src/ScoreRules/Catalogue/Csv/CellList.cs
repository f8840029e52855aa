namespace ScoreRules.Catalogue.Csv;

/// <summary>Cuts a cell that holds several names or words.</summary>
internal static class CellList
{
    /// <summary>Its parts, cut at <c>;</c> and <c>|</c>, and at a comma where that separates no cells; blank parts are left out.</summary>
    public static IEnumerable<CsvCell> Split(CsvCell cell)
    {
        var start = 0;
        for (var at = 0; at <= cell.Span.Length; at++)
        {
            if (at < cell.Span.Length && !IsSeparator(cell.Raw[at], cell))
            {
                continue;
            }

            if (cell.Part(start, at) is { IsBlank: false } part)
            {
                yield return part;
            }

            start = at + 1;
        }
    }

    private static bool IsSeparator(char c, CsvCell cell) => c is ';' or '|' || (c == ',' && cell.HasFreeComma);
}
