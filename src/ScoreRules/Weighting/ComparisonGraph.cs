namespace ScoreRules.Weighting;

/// <summary>Which things hang together by comparisons.</summary>
public static class ComparisonGraph
{
    /// <summary>The parts that no comparison joins, each rising; parts by their first member.</summary>
    /// <param name="count">How many things there are.</param>
    /// <param name="comparisons">The comparisons.</param>
    public static IReadOnlyList<IReadOnlyList<int>> Parts(int count, IEnumerable<PairwiseComparison> comparisons)
    {
        var part = Enumerable.Range(0, count).ToArray();
        foreach (var comparison in comparisons)
        {
            var (keep, give) = (Math.Min(part[comparison.First], part[comparison.Second]), Math.Max(part[comparison.First], part[comparison.Second]));
            for (var i = 0; i < count; i++)
            {
                part[i] = part[i] == give ? keep : part[i];
            }
        }

        return [.. Enumerable.Range(0, count).GroupBy(i => part[i]).OrderBy(members => members.Key).Select(members => members.ToArray())];
    }
}
