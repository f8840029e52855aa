namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>The ruleset that another builds on.</summary>
internal sealed record BaseSyntax(NameSyntax Name, NameSyntax? Version);
