namespace ScoreRules.Statistics.Agreement;

/// <summary>
/// How far two rankings agree when the top matters more: agreement at each depth, weighted by p^(depth - 1) (Webber, Moffat and Zobel
/// 2010, ACM Transactions on Information Systems 28:20). All figures run from 0 to 1.
/// </summary>
/// <param name="Truncated">(1 - p) times the sum of p^(d-1) A_d over the depths seen; the rest counts as no agreement at all.</param>
/// <param name="Least">What agreement is at least, whatever comes further down (their equation 11).</param>
/// <param name="Residual">How much more it could be (their equation 30).</param>
/// <param name="Extrapolated">What it is when agreement goes on as at the last depth (their equation 23): the figure to quote.</param>
/// <param name="AverageOverlap">The plain mean of agreement over the depths.</param>
public sealed record RankBiasedOverlap(double Truncated, double Least, double Residual, double Extrapolated, double AverageOverlap)
{
    /// <summary>Compares two rankings of equal length, each thing named once.</summary>
    /// <param name="first">Names, the best first.</param>
    /// <param name="second">Names, the best first; they need not be the same names.</param>
    /// <param name="persistence">p, between 0 and 1; nearer to 1 looks further down. See <see cref="TopWeight"/>.</param>
    /// <exception cref="StatisticsInputException">Rankings of different length, none at all, a name twice, or p out of its range.</exception>
    public static RankBiasedOverlap Of(IReadOnlyList<string> first, IReadOnlyList<string> second, double persistence) =>
        OfGroups([.. first.Select(name => (IReadOnlyList<string>)[name])], [.. second.Select(name => (IReadOnlyList<string>)[name])], persistence);

    /// <summary>Compares two rankings with ties: each step holds all things that share it, and agreement at a depth is 2 shared / (both sizes) down to that step.</summary>
    /// <inheritdoc cref="Of"/>
    public static RankBiasedOverlap OfGroups(IReadOnlyList<IReadOnlyList<string>> first, IReadOnlyList<IReadOnlyList<string>> second, double persistence)
    {
        var p = Require.Share(persistence, "The persistence");
        Require.SameLength(first.Count, second.Count, "The steps of two rankings");
        var depth = Require.AtLeast(first.Count, 1, "The number of steps of a ranking");
        var agreement = Agreements(first, second);
        double[] weight = [.. Enumerable.Range(1, depth).Select(d => Math.Pow(p, d))];
        var sum = agreement.Zip(weight, (a, w) => a * w).Sum();
        var overlap = agreement[^1] * depth;
        var least = ((1 - p) / p) * (Enumerable.Range(1, depth).Sum(d => ((agreement[d - 1] * d) - overlap) * weight[d - 1] / d) - (overlap * Math.Log(1 - p)));
        return new RankBiasedOverlap((1 - p) / p * sum, least, Rest(p, depth, overlap), ((1 - p) / p * sum) + (agreement[^1] * weight[^1]), agreement.Average());
    }

    /// <summary>The share of the whole weight that the first ranks carry (their equation 21).</summary>
    /// <param name="persistence">p, between 0 and 1.</param>
    /// <param name="depth">How many ranks, 1 or more.</param>
    /// <exception cref="StatisticsInputException">A figure out of its range.</exception>
    public static double TopWeight(double persistence, int depth)
    {
        var p = Require.Share(persistence, "The persistence");
        Require.AtLeast(depth, 1, "The depth");
        return 1 - Math.Pow(p, depth - 1) + ((1 - p) / p * depth * (-Math.Log(1 - p) - Harmonic(p, depth - 1)));
    }

    private static double Rest(double p, int depth, double overlap)
    {
        var full = (int)Math.Ceiling((2 * depth) - overlap - 1e-9);
        var inner = (2 * depth * (Harmonic(p, full) - Harmonic(p, depth))) + (overlap * (-Math.Log(1 - p) - Harmonic(p, full)));
        return (2 * Math.Pow(p, depth)) - Math.Pow(p, full) - ((1 - p) / p * inner);
    }

    // The sum of p^i / i, the beginning of -ln(1 - p).
    private static double Harmonic(double p, int terms) => Enumerable.Range(1, terms).Sum(i => Math.Pow(p, i) / i);

    private static double[] Agreements(IReadOnlyList<IReadOnlyList<string>> first, IReadOnlyList<IReadOnlyList<string>> second)
    {
        var (left, right) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));
        var shared = 0;
        var agreement = new double[first.Count];
        for (var d = 0; d < agreement.Length; d++)
        {
            shared += Add(first[d], left, right) + Add(second[d], right, left);
            agreement[d] = 2.0 * shared / (left.Count + right.Count);
        }

        return agreement;
    }

    private static int Add(IReadOnlyList<string> step, HashSet<string> own, HashSet<string> other)
    {
        Require.AtLeast(step.Count, 1, "The number of things in a step of a ranking");
        foreach (var name in step)
        {
            if (!own.Add(name))
            {
                throw new StatisticsInputException($"A ranking names \"{name}\" twice.");
            }
        }

        return step.Count(other.Contains);
    }
}
