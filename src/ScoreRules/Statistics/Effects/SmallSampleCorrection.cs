using MathNet.Numerics;

namespace ScoreRules.Statistics.Effects;

/// <summary>The factor that takes the bias out of a standardised difference (Hedges 1981, Journal of Educational Statistics 6:107).</summary>
public static class SmallSampleCorrection
{
    /// <summary>J(m) = gamma(m/2) / (sqrt(m/2) gamma((m-1)/2)), exact.</summary>
    /// <param name="degrees">m, degrees of freedom of the standard deviation, 2 or more.</param>
    /// <returns>A factor between 0.56 and 1.</returns>
    /// <exception cref="StatisticsInputException">Fewer than 2 degrees of freedom.</exception>
    public static double Exact(int degrees)
    {
        var half = Require.AtLeast(degrees, 2, "The degrees of freedom of a standard deviation") / 2.0;
        return Math.Exp(SpecialFunctions.GammaLn(half) - SpecialFunctions.GammaLn(half - 0.5)) / Math.Sqrt(half);
    }

    /// <summary>The usual approximation 1 - 3 / (4 m - 1), kept to compare with published figures.</summary>
    /// <inheritdoc cref="Exact"/>
    public static double Approximate(int degrees) => 1 - (3 / ((4.0 * Require.AtLeast(degrees, 2, "The degrees of freedom of a standard deviation")) - 1));
}
