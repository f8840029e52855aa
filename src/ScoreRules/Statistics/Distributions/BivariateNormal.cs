using MathNet.Numerics.Integration;

namespace ScoreRules.Statistics.Distributions;

/// <summary>Two correlated standard normal variables.</summary>
public static class BivariateNormal
{
    private const int Panels = 16;

    private static readonly GaussLegendreRule Rule = new(-1, 1, 20);

    /// <summary>
    /// The share with the first below h and the second below k: F(h) F(k) + 1/(2 pi) times the integral over t from 0 to arcsin r of
    /// exp(-(h^2 + k^2 - 2 h k sin t) / (2 cos^2 t)) (Plackett 1954, Biometrika 41:351, in the angle of Drezner and Wesolowsky 1990,
    /// Journal of Statistical Computation and Simulation 35:101). To about 1e-12 for correlations up to 0.99 in size.
    /// </summary>
    /// <param name="h">A number.</param>
    /// <param name="k">A number.</param>
    /// <param name="correlation">r, between -1 and 1, neither included.</param>
    /// <exception cref="StatisticsInputException">A value out of its range.</exception>
    public static double Below(double h, double k, double correlation)
    {
        Require.Finite(h, "A point of a normal distribution");
        Require.Finite(k, "A point of a normal distribution");
        var width = Math.Asin(Require.Correlation(correlation, "A correlation")) / Panels;
        var integral = 0.0;
        for (var panel = 0; panel < Panels; panel++)
        {
            for (var i = 0; i < Rule.Order; i++)
            {
                integral += Rule.GetWeight(i) * Density(h, k, width * (panel + ((Rule.GetAbscissa(i) + 1) / 2)));
            }
        }

        return (NormalDistribution.Below(h) * NormalDistribution.Below(k)) + (integral * width / 2 / (2 * Math.PI));
    }

    private static double Density(double h, double k, double angle)
    {
        var cosine = Math.Cos(angle);
        return Math.Exp(-((h * h) + (k * k) - (2 * h * k * Math.Sin(angle))) / (2 * cosine * cosine));
    }
}
