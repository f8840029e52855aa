using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tiering;

/// <summary>A placement that has a tier but no rank yet.</summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Score">Score in points, unrounded.</param>
/// <param name="Before">The tier its points alone would give.</param>
/// <param name="Tier">Its tier after limits and judgement.</param>
/// <param name="Limits">Caps and floors that apply.</param>
/// <param name="Binding">The limit that moved it, or null.</param>
/// <param name="Judgement">The personal judgement that applies to it, or null.</param>
internal readonly record struct DraftPlacement(
    PlacementRow Row,
    double Score,
    TierDefinition Before,
    TierDefinition Tier,
    ImmutableArray<LimitDefinition> Limits,
    LimitDefinition? Binding,
    PlaceDefinition? Judgement);
