namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>When a ruleset was checked, and by whom.</summary>
internal sealed record CheckedSyntax(DateSyntax Date, TextSyntax By);
