using MathNet.Numerics.LinearAlgebra;

namespace ScoreRules.Weighting;

/// <summary>
/// Weights from comparisons by least squares of logarithms: the w that make the sum of (ln w_i - ln w_j - ln a_ij)^2
/// smallest. When every pair is compared this is the row geometric mean (Crawford and Williams 1985, Journal of Mathematical
/// Psychology 29:387); with pairs missing it is the same over the graph of comparisons (Bozoki, Fulop and Ronyai 2010,
/// Mathematical and Computer Modelling 52:318), unique when the graph hangs together.
/// </summary>
public static class LogLeastSquares
{
    /// <summary>Weights up to one common factor: shares of 1.</summary>
    /// <param name="count">How many things there are.</param>
    /// <param name="comparisons">The comparisons; they must join all things.</param>
    /// <exception cref="ArgumentException">The comparisons leave parts that nothing joins.</exception>
    public static double[] Shares(int count, IReadOnlyList<PairwiseComparison> comparisons)
    {
        var anchors = new double[count];
        Array.Fill(anchors, double.NaN);
        anchors[0] = 1;
        return WeightVector.Normalised(Anchored(anchors, comparisons));
    }

    /// <summary>Weights where some are given and stay: the others are fitted to them.</summary>
    /// <param name="given">For each thing its weight, above 0; NaN for one to be found.</param>
    /// <param name="comparisons">The comparisons; they must join everything to be found to something given. Those between two given weights have no part.</param>
    /// <returns>All weights, the given ones unchanged.</returns>
    /// <exception cref="ArgumentException">Something is joined to nothing given.</exception>
    public static double[] Anchored(IReadOnlyList<double> given, IReadOnlyList<PairwiseComparison> comparisons)
    {
        var wanted = Enumerable.Range(0, given.Count).Where(i => double.IsNaN(given[i])).ToList();
        if (wanted.Count == 0)
        {
            return [.. given];
        }

        if (ComparisonGraph.Parts(given.Count, comparisons).Any(part => part.All(i => double.IsNaN(given[i]))))
        {
            throw new ArgumentException("Nothing joins some of the things to a given weight.", nameof(comparisons));
        }

        return Solve(given, comparisons, wanted);
    }

    // Normal equations: the Laplacian of the graph over what is wanted, which is positive definite once all of it is joined to a given weight.
    private static double[] Solve(IReadOnlyList<double> given, IReadOnlyList<PairwiseComparison> comparisons, List<int> wanted)
    {
        var position = Enumerable.Range(0, given.Count).Select(i => wanted.IndexOf(i)).ToArray();
        var laplacian = Matrix<double>.Build.Dense(wanted.Count, wanted.Count);
        var right = Vector<double>.Build.Dense(wanted.Count);
        foreach (var (first, second, ratio) in comparisons)
        {
            Add(first, second, Math.Log(ratio));
            Add(second, first, -Math.Log(ratio));
        }

        var solved = laplacian.Cholesky().Solve(right);
        return [.. given.Select((weight, i) => position[i] < 0 ? weight : Math.Exp(solved[position[i]]))];

        void Add(int own, int other, double log)
        {
            if (position[own] < 0)
            {
                return;
            }

            laplacian[position[own], position[own]] += 1;
            right[position[own]] += log + (position[other] < 0 ? Math.Log(given[other]) : 0);
            if (position[other] >= 0)
            {
                laplacian[position[own], position[other]] -= 1;
            }
        }
    }
}
