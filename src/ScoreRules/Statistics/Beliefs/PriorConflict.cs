using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Beliefs;

/// <summary>A study held against what was believed before it (Box 1980, Journal of the Royal Statistical Society A 143:383).</summary>
/// <param name="Expected">What the prior expected of the study, in points.</param>
/// <param name="Found">What it found, or the least that it shows.</param>
/// <param name="Z">(found - expected) over the square root of (the study's variance + the prior's variance of it). Of an "at least" study only a value above 0 is a conflict.</param>
public sealed record PriorConflict(double Expected, double Found, double Z)
{
    /// <summary>The two-sided probability of a study at least as far off.</summary>
    public double Probability => NormalDistribution.TwoSided(Z);

    /// <summary>Compares a study with the beliefs before it.</summary>
    /// <exception cref="StatisticsInputException">The study speaks of a score that is not there.</exception>
    public static PriorConflict Of(ScorePrior prior, Observation observation)
    {
        var (expected, variance) = (0.0, observation.Variance);
        foreach (var term in observation.Terms)
        {
            expected += term.Factor * prior.Means[Require.Index(term.Score, prior.Count, "A score that a study speaks of")];
            variance += observation.Terms.Sum(other => term.Factor * other.Factor * prior.Covariance(term.Score, other.Score));
        }

        return new PriorConflict(expected, observation.Value, (observation.Value - expected) / Math.Sqrt(variance));
    }
}
