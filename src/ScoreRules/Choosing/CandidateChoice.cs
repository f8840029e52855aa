using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>A choice with its points.</summary>
/// <param name="Candidates">The movements; for a stand-in, the one alone.</param>
/// <param name="Points">What the whole choice reaches.</param>
/// <param name="Broken">Limits that it does not keep.</param>
public sealed record CandidateChoice(ImmutableArray<ChoiceCandidate> Candidates, double Points, ImmutableArray<ChoiceLimit> Broken);
