using System.Numerics;

namespace ScoreRules.Statistics.Attribution;

/// <summary>
/// Divides a whole change among several causes that act together: the part of a cause is what it adds, averaged over all orders in which
/// the causes can be put in (Shapley 1953, in Kuhn and Tucker, Contributions to the Theory of Games II, p. 307). Parts sum to the whole.
/// </summary>
public static class ShapleyValue
{
    /// <summary>The most causes that are divided exactly; every set of causes is asked for once.</summary>
    public const int MostCauses = 12;

    /// <summary>The parts of each cause.</summary>
    /// <param name="causes">Number of causes, 0 to <see cref="MostCauses"/>.</param>
    /// <param name="values">By set of causes (bit i for cause i): the quantities with just these causes put in; the same quantities for each set.</param>
    /// <returns>By cause, then by quantity.</returns>
    /// <exception cref="StatisticsInputException">Too many causes, or not one entry for each set.</exception>
    public static double[][] Parts(int causes, IReadOnlyList<double[]> values)
    {
        if (causes is < 0 or > MostCauses)
        {
            throw new StatisticsInputException($"From 0 to {MostCauses} causes can be divided exactly, not {causes}.");
        }

        Require.SameLength(values.Count, 1 << causes, "Values and sets of causes");
        var weights = Weights(causes);
        return [.. Enumerable.Range(0, causes).Select(cause => PartOf(cause, values, weights))];
    }

    private static double[] PartOf(int cause, IReadOnlyList<double[]> values, double[] weights)
    {
        var part = new double[values[0].Length];
        for (var set = 0; set < values.Count; set++)
        {
            if ((set >> cause & 1) == 0)
            {
                Add(part, values[set], values[set | 1 << cause], weights[BitOperations.PopCount((uint)set)]);
            }
        }

        return part;
    }

    private static void Add(double[] part, double[] without, double[] with, double weight)
    {
        for (var i = 0; i < part.Length; i++)
        {
            part[i] += weight * (with[i] - without[i]);
        }
    }

    // The share of orders in which just these causes come before: s! (n - s - 1)! / n!.
    private static double[] Weights(int causes)
    {
        var weights = new double[Math.Max(1, causes)];
        for (var before = 0; before < causes; before++)
        {
            weights[before] = 1.0 / causes / Choose(causes - 1, before);
        }

        return weights;
    }

    private static double Choose(int all, int some) => Enumerable.Range(1, some).Aggregate(1.0, (ways, i) => ways * (all - some + i) / i);
}
