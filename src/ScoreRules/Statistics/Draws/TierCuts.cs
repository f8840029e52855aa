using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Draws;

/// <summary>Tiers by the lower borders of all but the lowest, from the best down.</summary>
public static class TierCuts
{
    /// <summary>The probability of each tier for a normal score: differences of the normal distribution function at the borders.</summary>
    /// <param name="mean">Its mean, in points.</param>
    /// <param name="deviation">Its standard deviation, above 0.</param>
    /// <param name="cuts">The borders, falling.</param>
    /// <returns>One probability for each tier, the best first.</returns>
    /// <exception cref="StatisticsInputException">A figure out of its range, or cuts that do not fall.</exception>
    public static IReadOnlyList<double> Probabilities(double mean, double deviation, IReadOnlyList<double> cuts)
    {
        Require.Finite(mean, "The mean of a score");
        Require.Positive(deviation, "The standard deviation of a score");
        var borders = Checked(cuts);
        var probabilities = new double[borders.Length + 1];
        for (var tier = 0; tier < probabilities.Length; tier++)
        {
            var upper = tier == 0 ? double.PositiveInfinity : (borders[tier - 1] - mean) / deviation;
            var lower = tier == borders.Length ? double.NegativeInfinity : (borders[tier] - mean) / deviation;
            probabilities[tier] = lower > 0
                ? NormalDistribution.Above(lower) - NormalDistribution.Above(upper)
                : NormalDistribution.Below(upper) - NormalDistribution.Below(lower);
        }

        return probabilities;
    }

    internal static double[] Checked(IReadOnlyList<double> cuts)
    {
        for (var i = 0; i < cuts.Count; i++)
        {
            Require.Finite(cuts[i], "The border of a tier");
            if (i > 0 && !(cuts[i] < cuts[i - 1]))
            {
                throw new StatisticsInputException("The borders of tiers must fall from the best tier down.");
            }
        }

        return [.. cuts];
    }

    internal static int Tier(double score, double[] cuts)
    {
        var tier = 0;
        while (tier < cuts.Length && score < cuts[tier])
        {
            tier++;
        }

        return tier;
    }
}
