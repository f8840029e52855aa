using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary><c>leave out</c>: movements that are not ranked.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Condition">Where it acts.</param>
/// <param name="Movements">Movements named one by one; empty when the condition alone decides.</param>
public sealed record ExclusionDefinition(StatementInfo Info, Condition Condition, ImmutableArray<string> Movements) : ConditionalStatement(Info, Condition);
