using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>A movement of a choice, and what it is there for.</summary>
/// <param name="Candidate">The movement.</param>
/// <param name="Adds">Points lost when it is left out and the others stay.</param>
/// <param name="Serves">The parts that it serves better than all the others.</param>
/// <param name="NeededFor">Limits that would not be kept without it.</param>
/// <param name="InItsPlace">What can stand in for it while the others stay, best first.</param>
public sealed record ChosenMovement(
    ChoiceCandidate Candidate,
    double Adds,
    ImmutableArray<ChoicePart> Serves,
    ImmutableArray<ChoiceLimit> NeededFor,
    ImmutableArray<CandidateChoice> InItsPlace);
