using System.Collections.Immutable;
using ScoreRules.Answers.Order;
using ScoreRules.Profiles;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Sore;

/// <summary>What setting aside movements that load a sore joint costs in one list.</summary>
/// <param name="Before">The list before.</param>
/// <param name="After">The list with the joint told.</param>
/// <param name="Payers">Where the first choice changes: what sets the old one above the new one, largest first.</param>
/// <param name="Cousin">Of what is left, the movement most like the old first choice; null when that is still there.</param>
/// <param name="Likeness">How alike the two are, 0 to 1; NaN without a cousin.</param>
public sealed record SoreFinding(TargetRanking Before, PersonalRanking After, ImmutableArray<OrderReason> Payers, Placement? Cousin, double Likeness)
{
    /// <summary>The first choice before; null when there is none.</summary>
    public Placement? First => Before.Placements.FirstOrDefault();

    /// <summary>The first choice that is left; null when nothing is.</summary>
    public Placement? Left => After.Ranking.Placements.FirstOrDefault();

    /// <summary>Whether the first choice is still there.</summary>
    public bool KeepsFirst => First is null || Left?.Row.Movement.Index == First.Row.Movement.Index;
}
