using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Choosing;

/// <summary>A movement that may be chosen, with its placements in the targets that are asked for.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="Placements">At least one, by target.</param>
public sealed record ChoiceCandidate(Movement Movement, ImmutableArray<Placement> Placements)
{
    /// <summary>Its best rank in any of the targets.</summary>
    public int BestRank => Placements.Min(placement => placement.Rank);
}
