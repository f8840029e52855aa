using MathNet.Numerics;

namespace ScoreRules.Statistics.Distributions;

/// <summary>The standard normal distribution, by the library's error functions, which are good to about 15 digits.</summary>
public static class NormalDistribution
{
    private static readonly double Root2 = Math.Sqrt(2);

    /// <summary>The share below z.</summary>
    public static double Below(double z) => SpecialFunctions.Erfc(-z / Root2) / 2;

    /// <summary>The share above z, without loss of digits in the tail.</summary>
    public static double Above(double z) => Below(-z);

    /// <summary>The share further from 0 than z on either side, as of a two-sided test.</summary>
    public static double TwoSided(double z) => SpecialFunctions.Erfc(Math.Abs(z) / Root2);

    /// <summary>The point below which a share lies.</summary>
    /// <param name="share">Between 0 and 1.</param>
    /// <exception cref="StatisticsInputException">A share out of its range.</exception>
    public static double Quantile(double share) => -Root2 * SpecialFunctions.ErfcInv(2 * Require.Share(share, "A share of a distribution"));

    /// <summary>The half width, in standard errors, of a two-sided interval of a level such as 0.95.</summary>
    internal static double HalfWidth(double level) => -Quantile((1 - Require.Share(level, "The level of an interval")) / 2);
}
