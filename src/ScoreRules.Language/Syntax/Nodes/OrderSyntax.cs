namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>Two movements, the first before the second, and the targets it is said for.</summary>
/// <param name="First">The first movement.</param>
/// <param name="Second">The second movement.</param>
/// <param name="Targets">The targets; empty for all.</param>
internal sealed record OrderSyntax(NameSyntax First, NameSyntax Second, NameSyntax[] Targets);
