namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A sore joint, and the targets it is asked about.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Targets">The targets; empty for all.</param>
internal sealed record SoreSyntax(NameSyntax Joint, NameSyntax[] Targets);
