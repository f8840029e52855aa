namespace ScoreRules.Language.Diagnostics;

/// <summary>
/// Optimal string alignment distance: insertions, deletions, replacements and swaps of neighbours count one each
/// (Damerau 1964, without editing one place twice).
/// </summary>
public static class NameDistance
{
    private const int LongestCompared = 80;

    /// <summary>The distance, or <see cref="int.MaxValue"/> when it is above <paramref name="limit"/>.</summary>
    public static int Between(string left, string right, int limit)
    {
        if (Math.Abs(left.Length - right.Length) > limit || left.Length > LongestCompared || right.Length > LongestCompared)
        {
            return int.MaxValue;
        }

        var distance = Fill(left, right);
        return distance <= limit ? distance : int.MaxValue;
    }

    private static int Fill(string left, string right)
    {
        int[] previous = new int[right.Length + 1], row = new int[right.Length + 1], beforePrevious = new int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= left.Length; i++)
        {
            (beforePrevious, previous, row) = (previous, row, beforePrevious);
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var cost = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1], previous[j]) + 1, previous[j - 1] + cost);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                {
                    row[j] = Math.Min(row[j], beforePrevious[j - 2] + 1);
                }
            }
        }

        return row[right.Length];
    }
}
