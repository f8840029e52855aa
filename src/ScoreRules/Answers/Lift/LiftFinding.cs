using System.Collections.Immutable;
using ScoreRules.Answers.Change;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Lift;

/// <summary>What would lift a movement in one target.</summary>
/// <param name="Explained">Where it stands now.</param>
/// <param name="Wanted">The tier to reach; null when it stands in the best one already.</param>
/// <param name="Obstacles">What leaves it out, or keeps it below the tier whatever its points are.</param>
/// <param name="Need">Points it lacks to the border of the tier; 0 when it has enough, NaN where the tier is a share of all movements.</param>
/// <param name="Found">The changes; null when nothing was searched.</param>
public sealed record LiftFinding(PlacementExplanation Explained, TierDefinition? Wanted, ImmutableArray<BoundStatement> Obstacles, double Need, ChangesFound? Found)
{
    /// <summary>Whether it is the benchmark, whose gap is always zero.</summary>
    public bool IsBenchmark => Explained.Ranking.Benchmark?.Index == Explained.Row.Index;

    /// <summary>Whether it stands in that tier, or in a better one, already.</summary>
    public bool IsThere => Explained.Placement is { } placement && (Wanted is null || placement.Tier.Index <= Wanted.Index);
}
