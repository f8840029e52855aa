using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Pooling;

/// <summary>Studies pooled as if all estimated one and the same effect: weights 1 / v.</summary>
/// <param name="Mean">The weighted mean.</param>
/// <param name="StandardError">1 / sqrt(sum of weights).</param>
/// <param name="Q">Cochran's Q, the weighted sum of squares about the mean (Cochran 1954, Biometrics 10:101).</param>
/// <param name="Degrees">k - 1.</param>
public sealed record CommonEffect(double Mean, double StandardError, double Q, int Degrees)
{
    /// <summary>The probability of a Q at least as large when all studies estimate one effect.</summary>
    public double QProbability => ChiSquaredDistribution.Above(Q, Degrees);

    /// <summary>Share, 0 to 1, of the variation that is not chance: max(0, (Q - df) / Q) (Higgins and Thompson 2002, Statistics in Medicine 21:1539).</summary>
    public double ISquared => Q > Degrees ? (Q - Degrees) / Q : 0;

    /// <summary>Q / df, not cut off at 1 (Higgins and Thompson 2002).</summary>
    public double HSquared => Q / Degrees;

    /// <summary>Mean over standard error.</summary>
    public double Z => Mean / StandardError;

    /// <summary>Two-sided probability of <see cref="Z"/>.</summary>
    public double Probability => NormalDistribution.TwoSided(Z);

    /// <summary>Pools studies.</summary>
    /// <param name="studies">Two studies or more.</param>
    /// <exception cref="StatisticsInputException">Fewer than two studies.</exception>
    public static CommonEffect Of(IReadOnlyList<StudyEffect> studies)
    {
        WeightedMean.RequireSeveral(studies);
        var fit = WeightedMean.Of(studies, 0);
        return new CommonEffect(fit.Mean, 1 / Math.Sqrt(fit.Weight), fit.Q, studies.Count - 1);
    }

    /// <summary>Interval for the mean by the normal distribution.</summary>
    /// <param name="level">Between 0 and 1, such as 0.95.</param>
    public Interval ConfidenceInterval(double level) => Interval.Around(Mean, NormalDistribution.HalfWidth(level) * StandardError);
}
