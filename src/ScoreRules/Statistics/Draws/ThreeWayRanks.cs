using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Draws;

/// <summary>The probabilities of the ranks of three things with normal scores, without draws: from the joint probability that one lies above both others, and below both. For more things no closed form exists and draws are needed.</summary>
public static class ThreeWayRanks
{
    /// <summary>The probability of each rank of each thing, the best first.</summary>
    /// <param name="means">Three means.</param>
    /// <param name="covariance">The covariance of two of them; no two may move together wholly.</param>
    /// <exception cref="StatisticsInputException">Not three means, or two that move together wholly.</exception>
    public static IReadOnlyList<IReadOnlyList<double>> Of(IReadOnlyList<double> means, Func<int, int, double> covariance)
    {
        if (means.Count != 3)
        {
            throw new StatisticsInputException("This way to find the probabilities of ranks takes exactly three things.");
        }

        return [.. Enumerable.Range(0, 3).Select(thing => Ranks(means, covariance, thing, (thing + 1) % 3, (thing + 2) % 3))];
    }

    private static double[] Ranks(IReadOnlyList<double> means, Func<int, int, double> covariance, int own, int one, int other)
    {
        var (first, second) = (Lead(one), Lead(other));
        var (a, b) = (Deviation(one), Deviation(other));
        var shared = covariance(own, own) - covariance(own, one) - covariance(own, other) + covariance(one, other);
        var correlation = shared / (a * b);
        var above = BivariateNormal.Below(first / a, second / b, correlation);
        var below = BivariateNormal.Below(-first / a, -second / b, correlation);
        return [above, 1 - above - below, below];

        double Lead(int than) => means[own] - means[than];
        double Deviation(int than) => Math.Sqrt(Require.Positive(covariance(own, own) + covariance(than, than) - (2 * covariance(own, than)), "The variance of a difference"));
    }
}
