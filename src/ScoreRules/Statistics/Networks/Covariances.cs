using MathNet.Numerics.LinearAlgebra;

namespace ScoreRules.Statistics.Networks;

/// <summary>What is asked of small covariance matrices.</summary>
internal static class Covariances
{
    /// <summary>Whether all pivots of its elimination are clearly above 0.</summary>
    public static bool IsPositiveDefinite(Matrix<double> covariance)
    {
        var size = covariance.RowCount;
        var left = covariance.Clone();
        for (var k = 0; k < size; k++)
        {
            if (!(left[k, k] > 1e-12 * covariance[k, k]))
            {
                return false;
            }

            for (var i = k + 1; i < size; i++)
            {
                for (var j = k + 1; j < size; j++)
                {
                    left[i, j] -= left[i, k] * left[k, j] / left[k, k];
                }
            }
        }

        return true;
    }
}
