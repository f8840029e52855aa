namespace ScoreRules.Publishing.Json;

/// <summary>An expectation that was tested.</summary>
/// <param name="Text">The expectation as written.</param>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Found">What was found.</param>
/// <param name="Comparison">Where it fails: the two movements side by side, if there are two.</param>
/// <param name="Rule">The statement.</param>
public sealed record TestedPart(string Text, bool Holds, string Found, ComparisonPart? Comparison, RulePart Rule);
