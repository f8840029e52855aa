using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>A number worked out of other numbers, step by step.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Result">The attribute it makes.</param>
/// <param name="Steps">The steps, in order.</param>
/// <param name="Stratum">0 when it rests on given facts alone, else one more than what it rests on.</param>
public sealed record RecipeDefinition(StatementInfo Info, AttributeDefinition Result, ImmutableArray<RecipeStep> Steps, int Stratum) : BoundStatement(Info);
