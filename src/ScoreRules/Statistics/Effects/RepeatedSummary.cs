namespace ScoreRules.Statistics.Effects;

/// <summary>What a study reports about one group measured twice: before and after, or under two conditions. Checked when it is made.</summary>
public sealed record RepeatedSummary
{
    /// <summary>Takes the figures of a group measured twice.</summary>
    /// <param name="firstMean">Mean the first time (or under the first condition).</param>
    /// <param name="secondMean">Mean the second time.</param>
    /// <param name="firstDeviation">Standard deviation the first time, above 0.</param>
    /// <param name="secondDeviation">Standard deviation the second time, above 0.</param>
    /// <param name="count">People measured both times, 2 or more.</param>
    /// <param name="correlation">Correlation between the two measurements, between -1 and 1.</param>
    /// <exception cref="StatisticsInputException">A figure out of its range.</exception>
    public RepeatedSummary(double firstMean, double secondMean, double firstDeviation, double secondDeviation, int count, double correlation)
    {
        First = new GroupSummary(firstMean, firstDeviation, count);
        Second = new GroupSummary(secondMean, secondDeviation, count);
        Correlation = Require.Correlation(correlation, "The correlation between the two measurements");
    }

    /// <summary>The figures of the first time.</summary>
    public GroupSummary First { get; }

    /// <summary>The figures of the second time.</summary>
    public GroupSummary Second { get; }

    /// <summary>Correlation between the two measurements.</summary>
    public double Correlation { get; }

    /// <summary>How many people.</summary>
    public int Count => First.Count;

    /// <summary>Variance of the differences: s1^2 + s2^2 - 2 r s1 s2.</summary>
    public double DifferenceVariance => First.Variance + Second.Variance - (2 * Correlation * First.StandardDeviation * Second.StandardDeviation);
}
