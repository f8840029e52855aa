using ScoreRules.Statistics.Pooling;

namespace ScoreRules.Statistics.Networks;

/// <summary>The variance between studies of a network, common to all comparisons, in the squared unit of the outcome. Cut off at 0.</summary>
public static class NetworkTauSquared
{
    /// <summary>By moments: (Q - df) / trace(P S) (DerSimonian and Laird 1986 for pairs; Jackson, White and Riley 2012, Statistics in Medicine 31:3805, for several outcomes or arms).</summary>
    /// <exception cref="StatisticsInputException">Too few studies to tell.</exception>
    public static double DerSimonianLaird(TreatmentNetwork network)
    {
        RequireDegrees(network);
        var common = NetworkEquations.Of(network, 0);
        return Math.Max(0, (common.Q - network.Degrees) / common.SpreadTrace);
    }

    /// <summary>By restricted maximum likelihood (Harville 1977, Journal of the American Statistical Association 72:320).</summary>
    /// <exception cref="StatisticsInputException">Too few studies to tell.</exception>
    public static double RestrictedMaximumLikelihood(TreatmentNetwork network)
    {
        RequireDegrees(network);
        var bound = network.Studies.SelectMany(study => study.Differences).Max(Math.Abs);
        return LikelihoodMaximum.Find(
            4 * bound * bound,
            tau => NetworkEquations.Of(network, tau).RestrictedLogLikelihood,
            tau => NetworkEquations.Of(network, tau) is var at ? at.SpreadQ - at.SpreadTrace : 0);
    }

    private static void RequireDegrees(TreatmentNetwork network)
    {
        if (network.Degrees < 1)
        {
            throw new StatisticsInputException("No comparison of this network was made twice, so the variance between studies cannot be told.");
        }
    }
}
