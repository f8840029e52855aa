namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>One criterion compared with another: so many times, or by a word of the house.</summary>
internal sealed record ImportanceSyntax(NameSyntax First, OperandSyntax Degree, NameSyntax Second);
