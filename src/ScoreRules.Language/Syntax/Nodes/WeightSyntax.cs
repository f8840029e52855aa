using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>How much a criterion counts; null value means "by weights". Empty targets mean everywhere.</summary>
internal sealed record WeightSyntax(ValueSyntax? Value, ImmutableArray<NameSyntax> Targets);
