using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tiering;

/// <summary>The ranking of one target.</summary>
/// <param name="Target">The target.</param>
/// <param name="Benchmark">The row of its benchmark.</param>
/// <param name="BenchmarkIsYardstickOnly">Whether the benchmark is left out of the ranking and only measured against.</param>
/// <param name="Placements">All placements, best first.</param>
/// <param name="LeftOut">Movements that are left out, by name.</param>
public sealed record TargetRanking(
    TargetDefinition Target,
    PlacementRow? Benchmark,
    bool BenchmarkIsYardstickOnly,
    ImmutableArray<Placement> Placements,
    ImmutableArray<LeftOutRow> LeftOut)
{
    /// <summary>The placement of a movement, or null when it is not ranked here.</summary>
    public Placement? Of(Movement movement) => Placements.FirstOrDefault(placement => placement.Row.Movement.Index == movement.Index);
}
