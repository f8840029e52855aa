using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Pooling;

/// <summary>The variance between studies, in the squared unit of the effects.</summary>
public static class TauSquared
{
    /// <summary>Estimates it; 0 or more.</summary>
    /// <param name="studies">Two studies or more.</param>
    /// <param name="estimator">In which way.</param>
    /// <exception cref="StatisticsInputException">Fewer than two studies, or an unknown estimator.</exception>
    public static double Estimate(IReadOnlyList<StudyEffect> studies, HeterogeneityEstimator estimator)
    {
        WeightedMean.RequireSeveral(studies);
        return Math.Max(0, estimator switch
        {
            HeterogeneityEstimator.DerSimonianLaird => DerSimonianLaird(studies),
            HeterogeneityEstimator.PauleMandel or HeterogeneityEstimator.EmpiricalBayes => AtQ(studies, studies.Count - 1),
            HeterogeneityEstimator.RestrictedMaximumLikelihood => Restricted(studies),
            HeterogeneityEstimator.MaximumLikelihood => Likelihood(studies),
            HeterogeneityEstimator.HedgesOlkin => (WeightedMean.PlainSquares(studies) / (studies.Count - 1)) - studies.Average(study => study.Variance),
            HeterogeneityEstimator.SidikJonkman => SidikJonkman(studies),
            HeterogeneityEstimator.HunterSchmidt => HunterSchmidt(studies),
            _ => throw new StatisticsInputException("This way to estimate the variance between studies is not known."),
        });
    }

    /// <summary>
    /// Interval for tau squared from the generalised Q, whose distribution is chi-squared with k - 1 degrees of freedom (Viechtbauer 2007,
    /// Statistics in Medicine 26:37). Both ends are 0 when even tau squared = 0 makes Q smaller than is plausible.
    /// </summary>
    /// <param name="studies">Two studies or more.</param>
    /// <param name="level">Between 0 and 1, such as 0.95.</param>
    /// <exception cref="StatisticsInputException">Fewer than two studies, or a level out of its range.</exception>
    public static Interval QProfile(IReadOnlyList<StudyEffect> studies, double level)
    {
        WeightedMean.RequireSeveral(studies);
        var tail = (1 - Require.Share(level, "The level of an interval")) / 2;
        var degrees = studies.Count - 1;
        return new Interval(AtQ(studies, ChiSquaredDistribution.Quantile(1 - tail, degrees)), AtQ(studies, ChiSquaredDistribution.Quantile(tail, degrees)));
    }

    /// <summary>Standard error of the restricted maximum likelihood estimate: square root of 2 over the trace of P^2, P the residual projection at that estimate (Viechtbauer 2005, Journal of Educational and Behavioral Statistics 30:261).</summary>
    /// <param name="studies">Two studies or more.</param>
    /// <param name="tauSquared">The estimate, 0 or more.</param>
    /// <exception cref="StatisticsInputException">Fewer than two studies, or an estimate below 0.</exception>
    public static double StandardErrorOfRestricted(IReadOnlyList<StudyEffect> studies, double tauSquared)
    {
        WeightedMean.RequireSeveral(studies);
        return Math.Sqrt(2 / WeightedMean.Of(studies, Require.NotNegative(tauSquared, "The variance between studies")).SquaredTrace);
    }

    // Q falls as tau squared grows, and is at most (sum of squares) / tau squared, which bounds the root.
    private static double AtQ(IReadOnlyList<StudyEffect> studies, double wanted) =>
        WeightedMean.Of(studies, 0).Q <= wanted
            ? 0
            : Bisection.Falling(tau => WeightedMean.Of(studies, tau).Q - wanted, 0, WeightedMean.PlainSquares(studies) / wanted);

    private static double DerSimonianLaird(IReadOnlyList<StudyEffect> studies)
    {
        var common = WeightedMean.Of(studies, 0);
        return (common.Q - (studies.Count - 1)) / common.Trace;
    }

    private static double HunterSchmidt(IReadOnlyList<StudyEffect> studies)
    {
        var common = WeightedMean.Of(studies, 0);
        return (common.Q - studies.Count) / common.Weight;
    }

    private static double SidikJonkman(IReadOnlyList<StudyEffect> studies)
    {
        var first = WeightedMean.PlainSquares(studies) / studies.Count;
        return first * WeightedMean.Of(studies, first).Q / (studies.Count - 1);
    }

    private static double Restricted(IReadOnlyList<StudyEffect> studies) => LikelihoodMaximum.Find(
        Bound(studies),
        tau => LogLikelihood(studies, tau, out var at) - (Math.Log(at.Weight) / 2),
        tau => WeightedMean.Of(studies, tau) is var at ? at.SquaredQ - at.Trace : 0);

    private static double Likelihood(IReadOnlyList<StudyEffect> studies) => LikelihoodMaximum.Find(
        Bound(studies),
        tau => LogLikelihood(studies, tau, out _),
        tau => WeightedMean.Of(studies, tau) is var at ? at.SquaredQ - at.Weight : 0);

    // Beyond the square of the range no residual asks for more variance.
    private static double Bound(IReadOnlyList<StudyEffect> studies)
    {
        var range = studies.Max(study => study.Effect) - studies.Min(study => study.Effect);
        return range * range;
    }

    private static double LogLikelihood(IReadOnlyList<StudyEffect> studies, double tauSquared, out WeightedMean at)
    {
        at = WeightedMean.Of(studies, tauSquared);
        return -(studies.Sum(study => Math.Log(study.Variance + tauSquared)) + at.Q) / 2;
    }
}
