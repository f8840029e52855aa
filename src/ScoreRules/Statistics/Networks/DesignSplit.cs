using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Networks;

/// <summary>Cochran's Q of a network, split into disagreement within designs and between designs (Krahn, Binder and Koenig 2013, BMC Medical Research Methodology 13:35).</summary>
/// <param name="Total">Q of the common effect over the network.</param>
/// <param name="TotalDegrees">Its degrees of freedom.</param>
/// <param name="Within">One entry for each design, in ordinal order.</param>
public sealed record DesignSplit(double Total, int TotalDegrees, IReadOnlyList<DesignHeterogeneity> Within)
{
    /// <summary>Disagreement among studies of like design.</summary>
    public double QWithin => Within.Sum(design => design.Q);

    /// <summary>Degrees of freedom of <see cref="QWithin"/>.</summary>
    public int DegreesWithin => Within.Sum(design => design.Degrees);

    /// <summary>Disagreement of the designs: inconsistency.</summary>
    public double QBetween => Total - QWithin;

    /// <summary>Degrees of freedom of <see cref="QBetween"/>.</summary>
    public int DegreesBetween => TotalDegrees - DegreesWithin;

    /// <summary>Probability of at least as much disagreement between designs by chance; null when nothing could disagree.</summary>
    public double? BetweenProbability => DegreesBetween > 0 ? ChiSquaredDistribution.Above(Math.Max(0, QBetween), DegreesBetween) : null;

    /// <summary>Splits Q of a network.</summary>
    public static DesignSplit Of(TreatmentNetwork network)
    {
        var within = network.Studies.GroupBy(study => study.Design, StringComparer.Ordinal).OrderBy(design => design.Key, StringComparer.Ordinal).Select(design => Design(design.Key, design));
        return new DesignSplit(NetworkEquations.Of(network, 0).Q, network.Degrees, [.. within]);
    }

    private static DesignHeterogeneity Design(string name, IEnumerable<NetworkStudy> studies)
    {
        var alone = TreatmentNetwork.Of(studies);
        return new DesignHeterogeneity(name, NetworkEquations.Of(alone, 0).Q, alone.Degrees);
    }
}
