using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Beliefs;

/// <summary>A movement that stands in another tier without a statement.</summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Before">Its tier with the statement; null for left out.</param>
/// <param name="After">Its tier without it; null for left out.</param>
public sealed record TierMove(PlacementRow Row, TierDefinition? Before, TierDefinition? After);
