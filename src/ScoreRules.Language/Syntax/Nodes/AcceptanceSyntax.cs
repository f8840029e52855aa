namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A warning that the author accepts, with the reason.</summary>
internal sealed record AcceptanceSyntax(NameSyntax Code, TextSyntax Because);
