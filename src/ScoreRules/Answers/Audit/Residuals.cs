using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Audit;

/// <summary>Scores beside what cousins suggest: the mean of all others, each counted by its likeness.</summary>
internal static class Residuals
{
    private const double Far = 2;
    private const int Fewest = 4;

    /// <summary>Placements further than twice the root mean square from what the others suggest, furthest first; none in lists of fewer than four.</summary>
    public static ImmutableArray<ResidualFinding> In(ImmutableArray<Placement> list, Likeness likeness)
    {
        if (list.Length < Fewest)
        {
            return [];
        }

        var suggested = list.Select(placement => Suggested(placement, list, likeness)).ToList();
        var known = Enumerable.Range(0, list.Length).Where(at => double.IsFinite(suggested[at])).ToList();
        var spread = known.Count == 0 ? 0 : Math.Sqrt(known.Average(at => Math.Pow(list[at].Score - suggested[at], 2)));
        return
        [
            .. known.Where(at => spread > 0 && Rounding.Compared(Math.Abs(list[at].Score - suggested[at])) > Rounding.Compared(Far * spread))
                .Select(at => Finding(list[at], suggested[at], spread, list, likeness)).OrderByDescending(finding => Math.Abs(Rounding.Compared(finding.Residual))).ThenBy(finding => finding.Placement.Row.Movement.Index),
        ];
    }

    /// <summary>The mean score of the others, each counted by its likeness; NaN when no likeness is known.</summary>
    public static double Suggested(Placement placement, ImmutableArray<Placement> list, Likeness likeness)
    {
        var (sum, weights) = (0.0, 0.0);
        foreach (var other in list.Where(other => other.Row.Index != placement.Row.Index))
        {
            var alike = likeness.Between(placement.Row.Movement, other.Row.Movement);
            (sum, weights) = double.IsNaN(alike) ? (sum, weights) : (sum + (alike * other.Score), weights + alike);
        }

        return sum / weights;
    }

    private static ResidualFinding Finding(Placement placement, double suggested, double spread, ImmutableArray<Placement> list, Likeness likeness)
    {
        var nearest = list.Where(other => other.Row.Index != placement.Row.Index).MaxBy(other => likeness.Between(placement.Row.Movement, other.Row.Movement))!;
        return new ResidualFinding(placement, suggested, spread, nearest, likeness.Between(placement.Row.Movement, nearest.Row.Movement));
    }
}
