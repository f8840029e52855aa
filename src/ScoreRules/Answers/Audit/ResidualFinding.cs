using ScoreRules.Tiering;

namespace ScoreRules.Answers.Audit;

/// <summary>A movement whose score lies far from what its cousins suggest.</summary>
/// <param name="Placement">The placement.</param>
/// <param name="Suggested">The mean score of the others, each counted by its likeness.</param>
/// <param name="Spread">Root mean square of such differences in the list.</param>
/// <param name="Nearest">The movement most like it.</param>
/// <param name="Likeness">How alike they are, 0 to 1.</param>
public sealed record ResidualFinding(Placement Placement, double Suggested, double Spread, Placement Nearest, double Likeness)
{
    /// <summary>Points above (or, negative, below) what its cousins suggest.</summary>
    public double Residual => Placement.Score - Suggested;
}
