namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A distance in a direction.</summary>
internal sealed record DirectionSyntax(QuantitySyntax Distance, NameSyntax Direction);
