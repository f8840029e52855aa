using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>What an expectation claims.</summary>
/// <param name="Kind">The kind of claim.</param>
/// <param name="Subject">A movement or a target; null for every target.</param>
/// <param name="Amount">Points, a count or a share, where the claim has one.</param>
/// <param name="Objects">The other movement, tiers, rule or called fact.</param>
/// <param name="Targets">The targets named after "for".</param>
internal sealed record ClaimSyntax(ClaimKind Kind, NameSyntax? Subject, QuantitySyntax? Amount, ImmutableArray<NameSyntax> Objects, ImmutableArray<NameSyntax> Targets);
