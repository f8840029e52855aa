namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>Kit that is taken away, and the targets it is asked about.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="Targets">The targets; empty for all.</param>
internal sealed record LossSyntax(NameSyntax[] Kit, NameSyntax[] Targets);
