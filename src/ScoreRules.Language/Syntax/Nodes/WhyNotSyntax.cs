namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A rule or called fact that did not hold, and the movement.</summary>
/// <param name="Statement">Name of the rule or called fact.</param>
/// <param name="Movement">The movement.</param>
internal sealed record WhyNotSyntax(NameSyntax Statement, NameSyntax Movement);
