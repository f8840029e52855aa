using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>An expectation to suggest: a movement stays where it stands today in one target.</summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Tier">The tier it is in; null for left out.</param>
/// <param name="ToBorder">Points to the nearest border; NaN where the tier has none.</param>
public sealed record Pin(PlacementRow Row, TierDefinition? Tier, double ToBorder);
