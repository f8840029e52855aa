using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>What a criterion reads, for which targets.</summary>
internal sealed record ReadsSyntax(NameSyntax Attribute, ImmutableArray<NameSyntax> Targets);
