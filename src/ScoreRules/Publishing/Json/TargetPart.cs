using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>The ranking of one target.</summary>
/// <param name="Name">Its name.</param>
/// <param name="PartOf">The target it is part of.</param>
/// <param name="Benchmark">The movement that others are measured against.</param>
/// <param name="BenchmarkIsYardstickOnly">Whether the benchmark itself is left out.</param>
/// <param name="Placements">Placements, best first.</param>
/// <param name="SetAside">What the profile sets aside, and why.</param>
/// <param name="LeftOut">What is left out, and why.</param>
public sealed record TargetPart(
    string Name,
    string? PartOf,
    string? Benchmark,
    bool BenchmarkIsYardstickOnly,
    ImmutableArray<PlacementPart> Placements,
    ImmutableArray<LeftOutPart> LeftOut,
    ImmutableArray<SetAsidePart> SetAside);
