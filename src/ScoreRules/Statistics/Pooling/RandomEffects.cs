using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Pooling;

/// <summary>Studies pooled as estimates of effects that differ between studies: weights 1 / (v + tau squared).</summary>
/// <param name="Mean">The weighted mean.</param>
/// <param name="StandardError">1 / sqrt(sum of weights).</param>
/// <param name="TauSquared">The variance between studies.</param>
/// <param name="TypicalVariance">(k - 1) / (sum w - sum w^2 / sum w) with w = 1/v: the variance within a study (Higgins and Thompson 2002, Statistics in Medicine 21:1539).</param>
/// <param name="Scale">q, the weighted mean square about the mean: sum w (y - mean)^2 / (k - 1).</param>
/// <param name="Studies">k.</param>
public sealed record RandomEffects(double Mean, double StandardError, double TauSquared, double TypicalVariance, double Scale, int Studies)
{
    /// <summary>Square root of tau squared, in the unit of the effects.</summary>
    public double Tau => Math.Sqrt(TauSquared);

    /// <summary>Share, 0 to 1, of the variation that lies between studies: tau^2 / (tau^2 + typical variance).</summary>
    public double ISquared => TauSquared / (TauSquared + TypicalVariance);

    /// <summary>tau^2 / typical variance + 1.</summary>
    public double HSquared => (TauSquared / TypicalVariance) + 1;

    /// <summary>Mean over standard error.</summary>
    public double Z => Mean / StandardError;

    /// <summary>Two-sided probability of <see cref="Z"/>.</summary>
    public double Probability => NormalDistribution.TwoSided(Z);

    /// <summary>Pools studies.</summary>
    /// <param name="studies">Two studies or more.</param>
    /// <param name="estimator">How tau squared is estimated.</param>
    /// <exception cref="StatisticsInputException">Fewer than two studies.</exception>
    public static RandomEffects Of(IReadOnlyList<StudyEffect> studies, HeterogeneityEstimator estimator)
    {
        var tauSquared = Pooling.TauSquared.Estimate(studies, estimator);
        var fit = WeightedMean.Of(studies, tauSquared);
        var degrees = studies.Count - 1;
        return new RandomEffects(fit.Mean, 1 / Math.Sqrt(fit.Weight), tauSquared, degrees / WeightedMean.Of(studies, 0).Trace, fit.Q / degrees, studies.Count);
    }

    /// <summary>Interval for the mean by the normal distribution.</summary>
    /// <param name="level">Between 0 and 1, such as 0.95.</param>
    public Interval ConfidenceInterval(double level) => Interval.Around(Mean, NormalDistribution.HalfWidth(level) * StandardError);

    /// <summary>Interval for the effect of a new study by the normal distribution: mean +- z sqrt(se^2 + tau^2).</summary>
    /// <param name="level">Between 0 and 1, such as 0.95.</param>
    public Interval PredictionByNormal(double level) => Interval.Around(Mean, NormalDistribution.HalfWidth(level) * PredictionError);

    /// <summary>Interval for the effect of a new study by Student's t with k - 2 degrees of freedom (Higgins, Thompson and Spiegelhalter 2009, Journal of the Royal Statistical Society A 172:137).</summary>
    /// <param name="level">Between 0 and 1, such as 0.95.</param>
    /// <exception cref="StatisticsInputException">Fewer than three studies.</exception>
    public Interval PredictionByStudent(double level)
    {
        Require.AtLeast(Studies, 3, "The number of studies for a prediction by Student's t");
        return Interval.Around(Mean, StudentDistribution.HalfWidth(level, Studies - 2) * PredictionError);
    }

    /// <summary>The mean with the error of Knapp and Hartung, for few studies.</summary>
    /// <param name="atLeastOne">Whether the scale q is not let below 1, so that the interval never gets narrower than the usual one by luck.</param>
    public KnappHartung AdjustedForFewStudies(bool atLeastOne) => new(Mean, StandardError * Math.Sqrt(atLeastOne ? Math.Max(1, Scale) : Scale), TauSquared, Studies - 1);

    private double PredictionError => Math.Sqrt((StandardError * StandardError) + TauSquared);
}
