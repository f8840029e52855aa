using System.Collections.Immutable;
using ScoreRules.Answers.Change;
using ScoreRules.Explanation;

namespace ScoreRules.Answers.WhyNot;

/// <summary>Why a rule or called fact does not hold for a movement in one target.</summary>
/// <param name="Explained">The movement in the target.</param>
/// <param name="Holds">Whether it holds after all.</param>
/// <param name="Ways">Each statement of that name, with what became of it.</param>
/// <param name="Found">What would have to be; null when it holds.</param>
public sealed record WhyNotFinding(PlacementExplanation Explained, bool Holds, ImmutableArray<WayFinding> Ways, ChangesFound? Found);
