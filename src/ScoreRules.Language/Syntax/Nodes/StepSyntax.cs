namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>One step of a recipe: its words and what it is done with.</summary>
internal sealed record StepSyntax(string Words, OperandSyntax Operand);
