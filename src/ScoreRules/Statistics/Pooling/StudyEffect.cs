namespace ScoreRules.Statistics.Pooling;

/// <summary>The result of one study, on the scale that all studies to be pooled share. Checked when it is made.</summary>
public readonly record struct StudyEffect
{
    /// <summary>Takes an effect and its sampling variance.</summary>
    /// <param name="effect">The effect.</param>
    /// <param name="variance">Square of its standard error, above 0.</param>
    /// <exception cref="StatisticsInputException">A variance of 0 or below, or no number.</exception>
    public StudyEffect(double effect, double variance)
    {
        Effect = Require.Finite(effect, "The effect of a study");
        Variance = Require.Positive(variance, "The variance of a study");
    }

    /// <summary>The effect.</summary>
    public double Effect { get; }

    /// <summary>Its sampling variance.</summary>
    public double Variance { get; }
}
