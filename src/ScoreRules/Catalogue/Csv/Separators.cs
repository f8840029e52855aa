namespace ScoreRules.Catalogue.Csv;

/// <summary>What separates the cells of a table.</summary>
internal static class Separators
{
    // In this order a tie is broken; a heading without any of them is one column.
    private const string Known = ";\t,";

    /// <summary>The sign that stands most often outside quotes in the first line that is not blank.</summary>
    public static char Guess(string text)
    {
        Span<int> counts = stackalloc int[Known.Length];
        var isQuoted = false;
        var hasContent = false;
        foreach (var c in text)
        {
            if (!isQuoted && hasContent && c is '\r' or '\n')
            {
                break;
            }

            isQuoted ^= c == '"';
            hasContent |= !char.IsWhiteSpace(c);
            if (!isQuoted && Known.IndexOf(c, StringComparison.Ordinal) is >= 0 and var which)
            {
                counts[which]++;
            }
        }

        return Known[counts.IndexOf(Math.Max(counts[0], Math.Max(counts[1], counts[2])))];
    }
}
