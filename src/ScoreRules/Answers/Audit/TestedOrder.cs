using ScoreRules.Evidence;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Audit;

/// <summary>A study that counts and found one movement better than another, which stands above it all the same.</summary>
/// <param name="Claim">What the study says.</param>
/// <param name="Better">The movement that it found better.</param>
/// <param name="Above">The movement that stands above.</param>
public sealed record TestedOrder(StudyClaim Claim, Placement Better, Placement Above)
{
    /// <summary>All of one list: claims about two movements, of which the one that was found better stands lower. What went one way here and the other way there tests no order.</summary>
    public static IEnumerable<TestedOrder> In(TargetEvidence evidence, TargetRanking ranking)
    {
        foreach (var claim in evidence.Claims.Where(claim => claim.Terms.Length == 2 && !claim.IsSplit))
        {
            var (first, second) = (PlacementOf(evidence, ranking, claim, up: true), PlacementOf(evidence, ranking, claim, up: false));
            var better = claim.Low > 0 ? first : claim.High < 0 || (claim.Sense == StudySense.Measured && claim.Low < 0) ? second : null;
            var other = ReferenceEquals(better, first) ? second : first;
            if (better is not null && other is not null && better.Rank > other.Rank)
            {
                yield return new TestedOrder(claim, better, other);
            }
        }
    }

    private static Placement? PlacementOf(TargetEvidence evidence, TargetRanking ranking, StudyClaim claim, bool up)
    {
        foreach (var term in claim.Terms)
        {
            if (term.Factor > 0 == up)
            {
                return ranking.Of(evidence.Rows[term.Score].Movement);
            }
        }

        return null;
    }
}
