using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>The lists of one target.</summary>
/// <param name="Name">The target.</param>
/// <param name="Common">Number of movements ranked in both.</param>
/// <param name="TauB">Kendall's tau-b over those; left out where it cannot be told.</param>
/// <param name="TopAgreement">Rank-biased overlap, extrapolated; left out where a list is empty.</param>
/// <param name="Persistence">The p of the rank-biased overlap.</param>
/// <param name="Blocks">What each block that differs does to this list.</param>
/// <param name="Placements">What changed.</param>
public sealed record ComparedTargetPart(
    string Name, int Common, double? TauB, double? TopAgreement, double Persistence, ImmutableArray<BlockAlonePart> Blocks, ImmutableArray<PlacementChangePart> Placements);
