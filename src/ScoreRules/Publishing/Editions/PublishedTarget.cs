using System.Collections.Immutable;

namespace ScoreRules.Publishing.Editions;

/// <summary>A published ranking of one target.</summary>
/// <param name="Name">The target.</param>
/// <param name="Benchmark">Its benchmark; null without one.</param>
/// <param name="Placements">Placements, best first, then what is left out.</param>
public sealed record PublishedTarget(string Name, string? Benchmark, ImmutableArray<PublishedPlacement> Placements);
