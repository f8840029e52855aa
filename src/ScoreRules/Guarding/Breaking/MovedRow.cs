using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>A placement that a breakage moves to another tier.</summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Before">Its tier; null for left out.</param>
/// <param name="After">Its tier in the broken ruleset; null for left out.</param>
public sealed record MovedRow(PlacementRow Row, TierDefinition? Before, TierDefinition? After);
