namespace ScoreRules.Statistics.Networks;

/// <summary>One group of a study: what it did, its mean outcome and the variance of that mean. Checked when it is made.</summary>
public sealed record Arm
{
    /// <summary>Takes the figures of a group.</summary>
    /// <param name="treatment">The name of what the group did.</param>
    /// <param name="mean">Its mean outcome, on the scale that all studies of the network share.</param>
    /// <param name="variance">Square of the standard error of the mean, above 0.</param>
    /// <exception cref="StatisticsInputException">A figure out of its range, or no name.</exception>
    public Arm(string treatment, double mean, double variance)
    {
        Treatment = string.IsNullOrWhiteSpace(treatment) ? throw new StatisticsInputException("Each arm of a study needs the name of its treatment.") : treatment;
        Mean = Require.Finite(mean, $"The mean of {treatment}");
        Variance = Require.Positive(variance, $"The variance of the mean of {treatment}");
    }

    /// <summary>What the group did.</summary>
    public string Treatment { get; }

    /// <summary>Its mean outcome.</summary>
    public double Mean { get; }

    /// <summary>Square of the standard error of the mean.</summary>
    public double Variance { get; }

    /// <summary>Makes one from the deviation between people: variance s^2 / n.</summary>
    /// <exception cref="StatisticsInputException">A figure out of its range, or no name.</exception>
    public static Arm Of(string treatment, Effects.GroupSummary group) => new(treatment, group.Mean, group.VarianceOfMean);
}
