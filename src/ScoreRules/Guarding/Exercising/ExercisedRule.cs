using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Exercising;

/// <summary>A rule, where it has its effect, and which expectations look there.</summary>
/// <param name="Statement">The rule.</param>
/// <param name="Group">Its kind.</param>
/// <param name="Placements">Where it has its effect: rows, rising.</param>
/// <param name="By">Expectations whose outcome depends on one of those placements, in the order of the house.</param>
public sealed record ExercisedRule(BoundStatement Statement, RuleGroup Group, ImmutableArray<PlacementRow> Placements, ImmutableArray<ExpectationDefinition> By);
