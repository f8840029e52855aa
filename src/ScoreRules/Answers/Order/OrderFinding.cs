using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Order;

/// <summary>Why two movements stand as they do in one target.</summary>
/// <param name="First">The movement that was named first.</param>
/// <param name="Second">The other.</param>
/// <param name="Outcome">How they stand.</param>
/// <param name="Reasons">What sets the upper one apart from the lower one; empty without an order.</param>
/// <param name="Sufficient">How many of the reasons in favour, largest first, outweigh everything against; 0 when the score does not decide.</param>
public sealed record OrderFinding(PlacementExplanation First, PlacementExplanation Second, OrderOutcome Outcome, ImmutableArray<OrderReason> Reasons, int Sufficient)
{
    /// <summary>The one that stands higher; the first when they are level or have no order.</summary>
    public PlacementExplanation Upper => Outcome == OrderOutcome.Below ? Second : First;

    /// <summary>The one that stands lower.</summary>
    public PlacementExplanation Lower => Outcome == OrderOutcome.Below ? First : Second;

    /// <summary>Points by which the upper one is ahead; negative when its tier alone puts it there.</summary>
    public double Ahead => Upper.Placement is { } upper && Lower.Placement is { } lower ? upper.Score - lower.Score : double.NaN;

    /// <summary>Whether the tier after limits decides, against the scores.</summary>
    public bool IsByTier => Outcome is OrderOutcome.Above or OrderOutcome.Below && Rounding.Compared(Ahead) <= 0;

    /// <summary>The reasons in favour that are enough.</summary>
    public IEnumerable<OrderReason> Enough => Reasons.Where(reason => reason.Points > 0).Take(Sufficient);

    /// <summary>Reasons in favour beyond those that are enough.</summary>
    public IEnumerable<OrderReason> More => Reasons.Where(reason => reason.Points > 0).Skip(Sufficient);

    /// <summary>Reasons against, largest first.</summary>
    public IEnumerable<OrderReason> Against => Reasons.Where(reason => reason.Points < 0);
}
