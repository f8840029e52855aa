using ScoreRules.Language.Binding;

namespace ScoreRules.Scoring;

/// <summary>A weight that a statement gives a criterion.</summary>
/// <param name="Number">The weight, above 0, on the scale of the numbers of the house.</param>
/// <param name="Basis">How it came about.</param>
internal sealed record ToldWeight(double Number, WeightBasis Basis);
