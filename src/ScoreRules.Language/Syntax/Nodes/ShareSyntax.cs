namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A muscle's parts of a target.</summary>
internal sealed record ShareSyntax(NameSyntax Muscle, QuantitySyntax Parts);
