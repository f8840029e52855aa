namespace ScoreRules.Statistics.Distributions;

/// <summary>
/// Student's t distribution by the incomplete beta function (Abramowitz and Stegun 1964, 26.7.1). The quantile is found by halving to
/// the last digit; the library's is good to about 4e-11 only.
/// </summary>
public static class StudentDistribution
{
    /// <summary>The share further from 0 than t on either side: I with x = df / (df + t^2), a = df/2, b = 1/2.</summary>
    /// <param name="t">The statistic.</param>
    /// <param name="degrees">Degrees of freedom, above 0.</param>
    /// <exception cref="StatisticsInputException">A value out of its range.</exception>
    public static double TwoSided(double t, double degrees)
    {
        Require.Positive(degrees, "The degrees of freedom");
        Require.Finite(t, "A t statistic");
        var square = t * t;
        return square < degrees
            ? 1 - RegularizedBeta.Lower(square / (degrees + square), 0.5, degrees / 2)
            : RegularizedBeta.Lower(degrees / (degrees + square), degrees / 2, 0.5);
    }

    /// <summary>The point below which a share lies.</summary>
    /// <param name="share">Between 0 and 1.</param>
    /// <param name="degrees">Degrees of freedom, above 0.</param>
    /// <exception cref="StatisticsInputException">A value out of its range.</exception>
    public static double Quantile(double share, double degrees)
    {
        var tails = 2 * Math.Min(Require.Share(share, "A share of a distribution"), 1 - share);
        var upper = 1.0;
        while (TwoSided(upper, degrees) > tails)
        {
            upper *= 2;
        }

        var found = share == 0.5 ? 0 : Bisection.Falling(t => TwoSided(t, degrees) - tails, 0, upper);
        return share > 0.5 ? found : -found;
    }

    /// <summary>The half width, in standard errors, of a two-sided interval of a level such as 0.95.</summary>
    internal static double HalfWidth(double level, double degrees) => Quantile(1 - ((1 - Require.Share(level, "The level of an interval")) / 2), degrees);
}
