using System.Globalization;
using ScoreRules.Statistics.Solving;

namespace ScoreRules.Statistics.Beliefs;

/// <summary>
/// The smallest move of scores that keeps a set of orders, where small is measured by the beliefs themselves: the s nearest to m in
/// (s - m)' C^-1 (s - m) with s_a - s_b >= margin for each order; s = m + C X' l with multipliers l >= 0 (Barlow, Bartholomew, Bremner and
/// Brunk 1972, Statistical Inference under Order Restrictions; solved by Goldfarb and Idnani 1983).
/// </summary>
public sealed class HeldOrders
{
    private readonly IReadOnlyList<HeldOrder> orders;
    private readonly double[][] reach;
    private readonly DualProblem problem;

    private HeldOrders(int count, Func<int, int, double> covariance, IReadOnlyList<HeldOrder> orders)
    {
        this.orders = orders;
        reach = [.. orders.Select(order => Enumerable.Range(0, count).Select(i => covariance(i, order.Above) - covariance(i, order.Below)).ToArray())];
        problem = new DualProblem([.. reach.Select(row => orders.Select(order => row[order.Above] - row[order.Below]).ToArray())], 0);
    }

    /// <summary>Prepares orders to be kept.</summary>
    /// <param name="count">How many scores there are.</param>
    /// <param name="covariance">The covariance of two scores, as of <see cref="ScoreBeliefs.Covariance"/>.</param>
    /// <param name="orders">The orders.</param>
    /// <exception cref="StatisticsInputException">A place that is not there, a margin below 0, or orders that go round in a circle, named by their places.</exception>
    public static HeldOrders Of(int count, Func<int, int, double> covariance, IReadOnlyList<HeldOrder> orders)
    {
        foreach (var order in orders)
        {
            Require.Index(order.Above, count, "A score that is to lie above");
            Require.Index(order.Below, count, "A score that is to lie below");
            Require.NotNegative(order.Margin, "The margin of an order");
        }

        var cycles = OrderCycles.Find(orders);
        return cycles.Count == 0
            ? new HeldOrders(count, covariance, orders)
            : throw new StatisticsInputException($"These orders go round in a circle, each above the next: {string.Join("; ", cycles.Select(Shown))}. Let go of one order of each circle.");
    }

    /// <summary>Moves scores in place.</summary>
    /// <param name="scores">As many as were said.</param>
    /// <returns>The multiplier of each order, 0 where it holds by itself; in points per squared point. A score i moves by the sum of multiplier times covariance of i with that difference.</returns>
    /// <exception cref="StatisticsInputException">The orders cannot hold together, because scores are believed to be wholly alike.</exception>
    public IReadOnlyList<double> Apply(Span<double> scores)
    {
        var start = new double[orders.Count];
        for (var i = 0; i < start.Length; i++)
        {
            start[i] = scores[orders[i].Above] - scores[orders[i].Below] - orders[i].Margin;
        }

        var solution = DualActiveSet.Solve(problem, start)
            ?? throw new StatisticsInputException("These orders cannot hold together, because some of their scores are believed to be wholly alike and cannot move apart.");
        foreach (var row in solution.Active)
        {
            InnerProduct.AddScaled(scores, reach[row], solution.Multipliers[row]);
        }

        return solution.Multipliers;
    }

    /// <summary>How many points an order moved a score, given the multipliers.</summary>
    /// <exception cref="StatisticsInputException">A place that is not there.</exception>
    public double Pull(IReadOnlyList<double> multipliers, int order, int score)
    {
        Require.Index(order, orders.Count, "An order");
        return multipliers[order] * reach[order][Require.Index(score, reach[order].Length, "A score")];
    }

    private static string Shown(IReadOnlyList<int> cycle) => string.Join(", ", cycle.Select(place => place.ToString(CultureInfo.InvariantCulture)));
}
