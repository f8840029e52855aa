namespace ScoreRules.Statistics.Distributions;

/// <summary>The chi-squared distribution: Q(df/2, x/2) of the incomplete gamma function (Abramowitz and Stegun 1964, 26.4.19).</summary>
public static class ChiSquaredDistribution
{
    /// <summary>The share above x.</summary>
    /// <param name="x">0 or more.</param>
    /// <param name="degrees">Degrees of freedom, above 0.</param>
    /// <exception cref="StatisticsInputException">A value out of its range.</exception>
    public static double Above(double x, double degrees) => RegularizedGamma.Upper(degrees / 2, x / 2);

    /// <summary>The point below which a share lies, found by halving to the last digit.</summary>
    /// <param name="share">Between 0 and 1.</param>
    /// <param name="degrees">Degrees of freedom, above 0.</param>
    /// <exception cref="StatisticsInputException">A value out of its range.</exception>
    public static double Quantile(double share, double degrees)
    {
        Require.Share(share, "A share of a distribution");
        var upper = Require.Positive(degrees, "The degrees of freedom");
        while (RegularizedGamma.Lower(degrees / 2, upper / 2) < share)
        {
            upper *= 2;
        }

        return share < 0.5
            ? Bisection.Falling(x => share - RegularizedGamma.Lower(degrees / 2, x / 2), 0, upper)
            : Bisection.Falling(x => Above(x, degrees) - (1 - share), 0, upper);
    }
}
