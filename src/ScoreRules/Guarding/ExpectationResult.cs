using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Guarding;

/// <summary>Whether an expectation holds.</summary>
/// <param name="Expectation">The expectation.</param>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Found">What was found, as a sentence.</param>
public sealed record ExpectationResult(ExpectationDefinition Expectation, bool Holds, string Found)
{
    /// <summary>The ranking that decided: the first in which it fails, or else the first looked at; null where no ranking was asked.</summary>
    public TargetRanking? Ranking { get; init; }
}
