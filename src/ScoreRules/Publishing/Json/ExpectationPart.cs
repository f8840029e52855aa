namespace ScoreRules.Publishing.Json;

/// <summary>An expectation of the house.</summary>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Found">What was found.</param>
/// <param name="Rule">The statement.</param>
public sealed record ExpectationPart(bool Holds, string Found, RulePart Rule);
