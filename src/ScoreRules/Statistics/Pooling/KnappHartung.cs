using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Pooling;

/// <summary>
/// A pooled mean whose standard error is scaled by the square root of the weighted mean square and judged by Student's t (Knapp and
/// Hartung 2003, Statistics in Medicine 22:2693; the scale not below 1: Roever, Knapp and Friede 2015, BMC Medical Research Methodology 15:99).
/// </summary>
/// <param name="Mean">The weighted mean.</param>
/// <param name="StandardError">Its scaled standard error.</param>
/// <param name="TauSquared">The variance between studies.</param>
/// <param name="Degrees">k - 1.</param>
public sealed record KnappHartung(double Mean, double StandardError, double TauSquared, int Degrees)
{
    /// <summary>Mean over standard error.</summary>
    public double T => Mean / StandardError;

    /// <summary>Two-sided probability of <see cref="T"/>.</summary>
    public double Probability => StudentDistribution.TwoSided(T, Degrees);

    /// <summary>Interval for the mean.</summary>
    /// <param name="level">Between 0 and 1, such as 0.95.</param>
    public Interval ConfidenceInterval(double level) => Interval.Around(Mean, StudentDistribution.HalfWidth(level, Degrees) * StandardError);

    /// <summary>Interval for the effect of a new study with k - 1 degrees of freedom and the scaled standard error (Partlett and Riley 2017, Statistics in Medicine 36:301).</summary>
    /// <param name="level">Between 0 and 1, such as 0.95.</param>
    public Interval Prediction(double level) =>
        Interval.Around(Mean, StudentDistribution.HalfWidth(level, Degrees) * Math.Sqrt((StandardError * StandardError) + TauSquared));
}
