namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>What a study compares: movements, classes of an attribute, or amounts of a criterion.</summary>
internal sealed record ComparesSyntax(string Level, NameSyntax? Of);
