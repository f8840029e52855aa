using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tiering;

/// <summary>Where a movement stands in a target.</summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Score">Score in points, unrounded.</param>
/// <param name="PrincipleScore">Score on principle alone, before evidence.</param>
/// <param name="Gap">Points above (or, negative, below) the benchmark; NaN without a benchmark.</param>
/// <param name="Tier">Its tier after limits and personal judgements.</param>
/// <param name="TierBeforeLimits">The tier its points alone would give.</param>
public sealed record Placement(PlacementRow Row, double Score, double PrincipleScore, double Gap, TierDefinition Tier, TierDefinition TierBeforeLimits)
{
    /// <summary>Rank from 1; tied placements share one.</summary>
    public int Rank { get; init; }

    /// <summary>Whether another placement has the same rank.</summary>
    public bool IsTied { get; init; }

    /// <summary>Whether it is the benchmark of its target.</summary>
    public bool IsBenchmark { get; init; }

    /// <summary>Caps and floors that apply, in source order; whether one binds shows from the tiers.</summary>
    public ImmutableArray<LimitDefinition> Limits { get; init; } = [];

    /// <summary>The limit that moved it to another tier, or null.</summary>
    public LimitDefinition? Binding { get; init; }

    /// <summary>The personal judgement that shifts it by a tier, or null.</summary>
    public PlaceDefinition? Judgement { get; init; }

    /// <summary>Where inside its tier it stands.</summary>
    public TierPosition Position { get; init; }

    /// <summary>Points to the nearest border of its tier; NaN where the tier has none.</summary>
    public double ToBorder { get; init; } = double.NaN;
}
