using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>The whole trail, in the order of effect.</summary>
/// <param name="CalledFacts">Every called fact with whether it holds.</param>
/// <param name="Criteria">Every criterion with what it read and gave.</param>
/// <param name="Rules">Every rule with what became of it.</param>
public sealed record TrailPart(ImmutableArray<CalledFactPart> CalledFacts, ImmutableArray<CriterionPart> Criteria, ImmutableArray<RuleResultPart> Rules);
