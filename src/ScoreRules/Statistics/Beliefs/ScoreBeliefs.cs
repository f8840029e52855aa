using ScoreRules.Statistics.Distributions;
using ScoreRules.Statistics.Solving;

namespace ScoreRules.Statistics.Beliefs;

/// <summary>
/// Beliefs after studies. Variances and covariances are worked out when they are asked for. They count every measured study and those "at
/// least" studies that act; where one begins to act they jump, because it says nothing of a lead that is enough.
/// </summary>
public sealed class ScoreBeliefs
{
    private readonly BeliefUpdate update;
    private readonly double[] means;
    private readonly double[] forces;
    private readonly int[] acting;
    private readonly GrowingFactor factor;
    private readonly double[]?[] solved;

    internal ScoreBeliefs(BeliefUpdate update, double[] means, double[] forces, int[] acting, GrowingFactor factor)
    {
        this.update = update;
        this.means = means;
        this.forces = forces;
        this.acting = acting;
        this.factor = factor;
        solved = new double[]?[means.Length];
    }

    /// <summary>The mean of each score, in points.</summary>
    public IReadOnlyList<double> Means => means;

    /// <summary>
    /// How hard each study pulls, in the order given: what it still misses over its variance, (value - posterior difference) / v. Of an "at
    /// least" study it is never below 0, and 0 when it does not act.
    /// </summary>
    public IReadOnlyList<double> Forces => forces;

    /// <summary>How many points a study moves a score: its force times the covariance of what it speaks of with that score. Over all studies these sum to the whole shift of the score.</summary>
    /// <exception cref="StatisticsInputException">A place that is not there.</exception>
    public double Pull(int study, int score)
    {
        Require.Index(study, forces.Length, "A study");
        return forces[study] * update.Reach[study][Require.Index(score, means.Length, "A score")];
    }

    /// <summary>Covariance of two scores: S - S X' (X S X' + V)^-1 X S over the studies that act.</summary>
    /// <exception cref="StatisticsInputException">A place that is not there.</exception>
    public double Covariance(int first, int second) => update.Prior.Covariance(first, second) - InnerProduct.Of(Solved(first), Solved(second));

    /// <summary>Variance of a score, 0 or more.</summary>
    /// <exception cref="StatisticsInputException">A place that is not there.</exception>
    public double Variance(int score) => Math.Max(0, Covariance(score, score));

    /// <summary>The probability that the first score lies above the second; a half when nothing can tell them apart.</summary>
    /// <exception cref="StatisticsInputException">A place that is not there.</exception>
    public double ProbabilityBetter(int first, int second)
    {
        var variance = Covariance(first, first) + Covariance(second, second) - (2 * Covariance(first, second));
        var lead = means[first] - means[second];
        return variance > 1e-12 * (Variance(first) + Variance(second)) ? NormalDistribution.Below(lead / Math.Sqrt(variance)) : (Math.Sign(lead) + 1) / 2.0;
    }

    /// <summary>The mean probability that a score lies above another one, 0 to 1: its P-score (Ruecker and Schwarzer 2015, BMC Medical Research Methodology 15:58).</summary>
    /// <exception cref="StatisticsInputException">A place that is not there, or a single score.</exception>
    public double MeanProbabilityBetter(int score)
    {
        Require.AtLeast(means.Length, 2, "The number of scores to compare");
        return Enumerable.Range(0, means.Length).Where(other => other != score).Average(other => ProbabilityBetter(score, other));
    }

    private double[] Solved(int score)
    {
        Require.Index(score, means.Length, "A score");
        return solved[score] ??= factor.Forward([.. acting.Select(study => update.Reach[study][score])]);
    }
}
