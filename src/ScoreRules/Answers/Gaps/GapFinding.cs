using ScoreRules.Answers.Change;
using ScoreRules.Catalogue;

namespace ScoreRules.Answers.Gaps;

/// <summary>A movement that could be and that the catalogue does not hold, one fact away from one it does.</summary>
/// <param name="Like">The movement it is like, in the target.</param>
/// <param name="Supposed">What judging it found.</param>
/// <param name="Spread">
/// How far the scores of its cousins scatter: the root mean square distance from their mean, each counted by its likeness. NaN with fewer than two cousins.
/// </param>
/// <param name="Cousins">How many movements of the list are at least half alike to it.</param>
public sealed record GapFinding(PlacementRow Like, Supposed Supposed, double Spread, int Cousins);
