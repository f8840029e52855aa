using ScoreRules.Language.Binding;

namespace ScoreRules.Scoring;

/// <summary>What one criterion gives each placement.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Attributes">The attribute read, by target index; null where the criterion does not count.</param>
/// <param name="Weights">Weight as written, by target index; 0 where the criterion does not count.</param>
/// <param name="Worth">Worth by row, 0 to 1; NaN where the criterion is left out for that row.</param>
/// <param name="Points">Points by row: weight as a share of all weights in force, times worth, times 100.</param>
public sealed record CriterionColumn(CriterionDefinition Criterion, AttributeDefinition?[] Attributes, double[] Weights, double[] Worth, double[] Points);
