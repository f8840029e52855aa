using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Statistics.Draws;

/// <summary>Keeps tested orders in each draw, by the smallest move.</summary>
/// <param name="Orders">The orders to be kept.</param>
public sealed record HeldOrderStep(HeldOrders Orders) : IScoreStep
{
    /// <inheritdoc/>
    public void Apply(Draw draw, Generator generator) => Orders.Apply(draw.Scores);
}
