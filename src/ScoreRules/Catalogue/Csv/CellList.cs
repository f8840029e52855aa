namespace ScoreRules.Catalogue.Csv;

/// <summary>Cuts a cell that holds several names or words.</summary>
internal static class CellList
{
    /// <summary>Its parts, cut at <c>;</c> and <c>|</c>, and at a comma where that separates no cells; blank parts are left out.</summary>
    public static IEnumerable<CsvCell> Split(CsvCell cell) => Split(cell, cell.HasFreeComma);

    /// <summary>
    /// The same for names, which often hold a comma themselves: where the cell uses <c>;</c> or <c>|</c>, a comma belongs to the
    /// name. One name with a comma is written with <c>|</c> behind it.
    /// </summary>
    public static IEnumerable<CsvCell> SplitNames(CsvCell cell) => Split(cell, cell.HasFreeComma && !cell.Raw.ContainsAny(';', '|'));

    private static IEnumerable<CsvCell> Split(CsvCell cell, bool atCommas)
    {
        var start = 0;
        for (var at = 0; at <= cell.Span.Length; at++)
        {
            if (at < cell.Span.Length && !IsSeparator(cell.Raw[at], atCommas))
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

    private static bool IsSeparator(char c, bool atCommas) => c is ';' or '|' || (c == ',' && atCommas);
}
