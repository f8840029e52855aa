namespace ScoreRules.Statistics.Agreement;

/// <summary>Ranks from 1 for the lowest value; equal values share the mean of their ranks.</summary>
internal sealed record AverageRanks(double[] Ranks, double TieSum)
{
    /// <summary>Ranks values; the tie sum is the sum of t^3 - t over groups of t equal values.</summary>
    public static AverageRanks Of(IReadOnlyList<double> values)
    {
        int[] order = [.. Enumerable.Range(0, values.Count).OrderBy(i => values[i])];
        var ranks = new double[values.Count];
        var ties = 0.0;
        for (var from = 0; from < order.Length;)
        {
            var to = from + 1;
            while (to < order.Length && values[order[to]] == values[order[from]])
            {
                to++;
            }

            var size = to - from;
            ties += ((double)size * size * size) - size;
            for (var k = from; k < to; k++)
            {
                ranks[order[k]] = (from + 1 + to) / 2.0;
            }

            from = to;
        }

        return new AverageRanks(ranks, ties);
    }
}
