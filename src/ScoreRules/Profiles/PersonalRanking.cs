using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Profiles;

/// <summary>A ranking as one profile sees it.</summary>
/// <param name="Ranking">What is left, with ranks counted anew; scores and tiers are those of the house.</param>
/// <param name="Whole">The ranking without the profile.</param>
/// <param name="SetAside">What is set aside, best first.</param>
/// <param name="Preferred">Rows that the profile prefers.</param>
/// <param name="CouldNotTell">Rows whose kit, or whose demand, could not be told; they stay in the ranking.</param>
public sealed record PersonalRanking(
    TargetRanking Ranking,
    TargetRanking Whole,
    ImmutableArray<SetAsideRow> SetAside,
    ImmutableArray<PlacementRow> Preferred,
    ImmutableArray<PlacementRow> CouldNotTell)
{
    /// <summary>The first choice of the house, and the first that is left.</summary>
    public (Placement? Of, Placement? Left) FirstChoice => (Whole.Placements.FirstOrDefault(), Ranking.Placements.FirstOrDefault());
}
