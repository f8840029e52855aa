namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>One tier and where it begins.</summary>
internal sealed record TierSyntax(NameSyntax Name, TierCut Cut, QuantitySyntax? Amount);
