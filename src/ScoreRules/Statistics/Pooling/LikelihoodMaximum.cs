using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Pooling;

/// <summary>
/// The tau squared of the highest likelihood, which may have several peaks: the best of a grid that is finer towards 0, then the root of
/// the slope beside it, to the last digit.
/// </summary>
internal static class LikelihoodMaximum
{
    private const int Steps = 160;

    /// <summary>Finds it between 0 and a bound above which the likelihood falls.</summary>
    public static double Find(double bound, Func<double, double> logLikelihood, Func<double, double> slope)
    {
        if (bound <= 0)
        {
            return 0;
        }

        var grid = Grid(bound);
        var best = 0;
        for (var i = 1; i < grid.Length; i++)
        {
            best = logLikelihood(grid[i]) > logLikelihood(grid[best]) ? i : best;
        }

        return slope(grid[best]) > 0
            ? best == grid.Length - 1 ? bound : Bisection.Falling(slope, grid[best], grid[best + 1])
            : best == 0 ? 0 : Bisection.Falling(slope, grid[best - 1], grid[best]);
    }

    // 0, then twelve powers of ten in equal ratios.
    private static double[] Grid(double bound) => [0, .. Enumerable.Range(0, Steps).Select(step => bound * Math.Pow(10, 12.0 * (step - Steps + 1) / (Steps - 1)))];
}
