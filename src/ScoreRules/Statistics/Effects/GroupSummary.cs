namespace ScoreRules.Statistics.Effects;

/// <summary>What a study reports about one group. Checked when it is made.</summary>
public sealed record GroupSummary
{
    /// <summary>Takes the figures of a group.</summary>
    /// <param name="mean">Mean of the outcome, in its own unit.</param>
    /// <param name="standardDeviation">Standard deviation between people, above 0, in the same unit.</param>
    /// <param name="count">People, 2 or more.</param>
    /// <exception cref="StatisticsInputException">A figure out of its range.</exception>
    public GroupSummary(double mean, double standardDeviation, int count)
    {
        Mean = Require.Finite(mean, "The mean of a group");
        StandardDeviation = Require.Positive(standardDeviation, "The standard deviation of a group");
        Count = Require.AtLeast(count, 2, "The number of people in a group");
    }

    /// <summary>Mean of the outcome, in its own unit.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation between people, in the unit of the outcome.</summary>
    public double StandardDeviation { get; }

    /// <summary>How many people.</summary>
    public int Count { get; }

    /// <summary>Square of the standard deviation.</summary>
    internal double Variance => StandardDeviation * StandardDeviation;

    /// <summary>Square of the standard error of the mean.</summary>
    internal double VarianceOfMean => Variance / Count;
}
