using System.Collections.Immutable;
using ScoreRules.Statistics.Pooling;

namespace ScoreRules.Evidence;

/// <summary>
/// Gives each claim its whole doubt. A finding that nobody repeated gets what the house says a lone study adds; where several studies measured
/// the same two in the same way, their own spread between studies (restricted maximum likelihood) takes its place. Trust and the share
/// of the target that was measured multiply precision.
/// </summary>
internal static class BetweenStudies
{
    /// <summary>The claims of one target with their doubt.</summary>
    /// <param name="claims">The claims with their own doubt.</param>
    /// <param name="lone">What a finding that nobody repeated may be off beside it, one standard deviation in points.</param>
    public static ImmutableArray<StudyClaim> Add(IEnumerable<StudyClaim> claims, double lone)
    {
        var all = claims.ToList();
        var alike = all.Where(claim => claim.Sense == StudySense.Measured && claim.Deviation > 0).ToLookup(Sort);
        return [.. all.Select(claim => With(claim, [.. alike[Sort(claim)]], lone))];
    }

    private static StudyClaim With(StudyClaim claim, List<StudyClaim> alike, double lone)
    {
        var repeated = claim.Sense == StudySense.Measured && claim.Deviation > 0 && alike.Count > 1;
        var between = repeated ? Math.Sqrt(TauSquared.Estimate([.. alike.Select(each => new StudyEffect(Turned(each), each.Deviation * each.Deviation))], HeterogeneityEstimator.RestrictedMaximumLikelihood)) : lone;
        var variance = (claim.Deviation * claim.Deviation) + (between * between);
        return claim with { Deviation = Math.Sqrt(variance / claim.Study.Trust / claim.Covered), BetweenStudies = between, Repeats = repeated ? alike.Count : 1 };
    }

    private static ((string, string) Sides, Language.StudyDesign Design) Sort(StudyClaim claim) => (Sides.Of(claim.First, claim.Second), claim.Study.Design);

    private static double Turned(StudyClaim claim) => Sides.IsInOrder(claim.First, claim.Second) ? claim.Low : -claim.Low;
}
