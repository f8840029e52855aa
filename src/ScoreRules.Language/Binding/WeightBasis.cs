namespace ScoreRules.Language.Binding;

/// <summary>How the statement <c>weights</c> gave a criterion its weight.</summary>
/// <param name="Source">The statement.</param>
/// <param name="Rank">Its place in the order, from 1; 0 when the weight comes from comparisons.</param>
/// <param name="Count">How many criteria the statement speaks of.</param>
public sealed record WeightBasis(WeightsDefinition Source, int Rank, int Count);
