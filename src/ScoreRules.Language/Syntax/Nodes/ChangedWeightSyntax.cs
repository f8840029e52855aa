namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>How much a changed criterion counts: so many times what it did, or a new weight.</summary>
/// <param name="Factor">How many times as much; null when a new weight is written.</param>
/// <param name="Weight">The new weight; null when a factor is written.</param>
internal sealed record ChangedWeightSyntax(QuantitySyntax? Factor, WeightSyntax? Weight);
