using ScoreRules.Statistics.Solving;

namespace ScoreRules.Statistics.Sensitivity;

/// <summary>
/// The smallest changes of weights that bring two things level, exactly: a hair more swaps them. With d the differences of their values,
/// a the difference of their awards and w weights that sum to 1, level means d w + a = 0 (the question of Triantaphyllou and Sanchez 1997,
/// Decision Sciences 28:151, answered in closed form).
/// </summary>
public sealed class WeightSwap
{
    private readonly double[] weights;
    private readonly double[] differences;
    private readonly double award;

    private WeightSwap(double[] weights, double[] differences, double award)
    {
        this.weights = weights;
        this.differences = differences;
        this.award = award;
        Gap = InnerProduct.Of(weights, differences) + award;
    }

    /// <summary>How far the first lies above the second with the weights given.</summary>
    public double Gap { get; }

    /// <summary>Whether any weights bring them level. Not when one is better on every criterion by more than awards make up for.</summary>
    public bool IsPossible => differences.Min() + award <= 0 && differences.Max() + award >= 0;

    /// <summary>Compares two things.</summary>
    /// <param name="weights">Each 0 or more, not all 0; they are taken as shares of their sum.</param>
    /// <param name="first">The values of the first thing, one for each weight.</param>
    /// <param name="second">The values of the second thing.</param>
    /// <param name="award">Awards of the first less those of the second, in the unit of the values.</param>
    /// <exception cref="StatisticsInputException">Lists of different length, or a figure out of its range.</exception>
    public static WeightSwap Of(IReadOnlyList<double> weights, IReadOnlyList<double> first, IReadOnlyList<double> second, double award = 0)
    {
        Require.SameLength(weights.Count, first.Count, "Weights and values");
        Require.SameLength(weights.Count, second.Count, "Weights and values");
        var total = Require.Positive(weights.Sum(weight => Require.NotNegative(weight, "A weight")), "The sum of the weights");
        return new WeightSwap(
            [.. weights.Select(weight => weight / total)],
            [.. first.Zip(second, (a, b) => Require.Finite(a, "A value") - Require.Finite(b, "A value"))],
            Require.Finite(award, "The difference of the awards"));
    }

    /// <summary>One weight changes and the others keep their proportions: the share it must have, from w' (d_k + a) + (1 - w') r = 0 with r what the others come to by themselves.</summary>
    /// <param name="criterion">Which weight.</param>
    /// <returns>Its new share, 0 to 1; null when no share does it.</returns>
    /// <exception cref="StatisticsInputException">No such criterion.</exception>
    public double? Single(int criterion)
    {
        var own = weights[Require.Index(criterion, weights.Length, "A criterion")];
        var others = Enumerable.Range(0, weights.Length).Where(k => k != criterion).Sum(k => weights[k] * differences[k]);
        if (own >= 1)
        {
            return null;
        }

        var rest = (others / (1 - own)) + award;
        var share = rest / (rest - (differences[criterion] + award));
        return share is >= 0 and <= 1 ? share : null;
    }

    /// <summary>Weight moves from one criterion to another: how much, gap / (d_from - d_to).</summary>
    /// <param name="from">The criterion that gives.</param>
    /// <param name="to">The criterion that takes.</param>
    /// <returns>The share that moves, above 0 and at most what the giver has (or 0 when they are level already); null when no move does it.</returns>
    /// <exception cref="StatisticsInputException">No such criterion.</exception>
    public double? Transfer(int from, int to)
    {
        var spread = differences[Require.Index(from, weights.Length, "A criterion")] - differences[Require.Index(to, weights.Length, "A criterion")];
        var moved = Gap / spread;
        return moved >= 0 && moved <= weights[from] ? moved : null;
    }

    /// <summary>All weights change as little as possible, by least squares, none below 0. Criteria on which the two are within 1e-12 of level, against the one where they are furthest apart, count as level.</summary>
    /// <returns>The new shares, which sum to 1; null when no weights do it.</returns>
    public IReadOnlyList<double>? LeastSquares()
    {
        if (!IsPossible || Gap == 0)
        {
            return IsPossible ? weights : null;
        }

        var sign = Math.Sign(Gap);
        return new LevelProjection(weights, [.. differences.Select(difference => sign * (difference + award))]).Find();
    }
}
