namespace ScoreRules.Statistics.Solving;

/// <summary>The Cholesky factor of a covariance that may be singular, such as of two things that are wholly alike: what is left below a share of its diagonal is taken for 0.</summary>
internal static class SemidefiniteFactor
{
    private const double Nothing = 1e-10;

    /// <summary>The rows of L, with L L' the covariance.</summary>
    /// <exception cref="StatisticsInputException">Something is clearly below 0, so it is no covariance.</exception>
    public static double[][] Of(int size, Func<int, int, double> covariance)
    {
        var rows = new double[size][];
        for (var i = 0; i < size; i++)
        {
            var row = rows[i] = new double[i + 1];
            for (var j = 0; j < i; j++)
            {
                row[j] = rows[j][j] == 0 ? 0 : (covariance(i, j) - InnerProduct.Of(row.AsSpan(0, j), rows[j].AsSpan(0, j))) / rows[j][j];
            }

            var diagonal = covariance(i, i);
            var left = diagonal - InnerProduct.Of(row.AsSpan(0, i), row.AsSpan(0, i));
            if (left < -1e-6 * diagonal)
            {
                throw new StatisticsInputException("The likenesses cannot be those of one set of things: together they contradict one another.");
            }

            row[i] = left > Nothing * diagonal ? Math.Sqrt(left) : 0;
        }

        return rows;
    }
}
