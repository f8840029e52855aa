namespace ScoreRules.Statistics.Agreement;

/// <summary>How far two lists of scores for the same things put them into the same order.</summary>
public static class RankCorrelation
{
    /// <summary>Kendall's tau-b: (concordant - discordant) / sqrt((pairs not tied in x) (pairs not tied in y)) (Kendall 1945, Biometrika 33:239). -1 to 1.</summary>
    /// <param name="first">A score for each thing; two things or more.</param>
    /// <param name="second">Another score for each, in the same order of things.</param>
    /// <returns>Null when one list is constant: then nothing can agree or disagree with it.</returns>
    /// <exception cref="StatisticsInputException">Lists of different length, fewer than two things, or no numbers.</exception>
    public static double? TauB(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        Check(first, second);
        var (balance, inFirst, inSecond) = (0L, 0L, 0L);
        for (var i = 1; i < first.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (x, y) = (first[i].CompareTo(first[j]), second[i].CompareTo(second[j]));
                balance += x * y;
                inFirst += x * x;
                inSecond += y * y;
            }
        }

        return inFirst == 0 || inSecond == 0 ? null : balance / Math.Sqrt((double)inFirst * inSecond);
    }

    /// <summary>Spearman's rho: the correlation of the ranks, equal values at their mean rank (Spearman 1904, American Journal of Psychology 15:72). -1 to 1.</summary>
    /// <inheritdoc cref="TauB"/>
    public static double? Rho(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        Check(first, second);
        var (x, y) = (AverageRanks.Of(first).Ranks, AverageRanks.Of(second).Ranks);
        var middle = (first.Count + 1) / 2.0;
        var (cross, inFirst, inSecond) = (0.0, 0.0, 0.0);
        for (var i = 0; i < x.Length; i++)
        {
            cross += (x[i] - middle) * (y[i] - middle);
            inFirst += (x[i] - middle) * (x[i] - middle);
            inSecond += (y[i] - middle) * (y[i] - middle);
        }

        return inFirst == 0 || inSecond == 0 ? null : cross / Math.Sqrt(inFirst * inSecond);
    }

    private static void Check(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        Require.SameLength(first.Count, second.Count, "Two lists of scores");
        Require.AtLeast(first.Count, 2, "The number of things to compare");
        foreach (var score in first.Concat(second))
        {
            Require.Finite(score, "A score");
        }
    }
}
