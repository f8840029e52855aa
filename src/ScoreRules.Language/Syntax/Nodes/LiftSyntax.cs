namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A movement to be lifted, and the tier when it stands in the same line.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="Tier">The tier; null when it is not said there.</param>
/// <param name="Targets">The targets; empty for all.</param>
internal sealed record LiftSyntax(NameSyntax Movement, NameSyntax? Tier, NameSyntax[] Targets);
