using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding;

/// <summary>Whether an expectation holds.</summary>
/// <param name="Expectation">The expectation.</param>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Found">What was found, as a sentence.</param>
public sealed record ExpectationResult(ExpectationDefinition Expectation, bool Holds, string Found);
