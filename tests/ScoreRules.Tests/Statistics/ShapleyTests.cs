using CsCheck;
using ScoreRules.Statistics;
using ScoreRules.Statistics.Attribution;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Dividing a change among its causes: worked out by hand, by all orders, and by the properties that define the value.</summary>
public sealed class ShapleyTests
{
    [Fact]
    public void One_right_glove_and_two_left_ones_are_worth_what_the_textbook_says()
    {
        // Players 0 and 1 own a left glove each, player 2 a right one; a pair is worth 1. The known answer is 1/6, 1/6, 2/3.
        var values = Enumerable.Range(0, 8).Select(set => new double[] { (set & 4) != 0 && (set & 3) != 0 ? 1 : 0 }).ToList();
        ShapleyValue.Parts(3, values).Select(part => part[0]).ShouldBe([1 / 6.0, 1 / 6.0, 2 / 3.0], 1e-12);
    }

    [Fact]
    public void Causes_that_do_not_depend_on_one_another_get_what_they_do_alone() =>
        ShapleyValue.Parts(2, [[10, 0], [13, 0], [8, 5], [11, 5]]).Select(part => (part[0], part[1])).ShouldBe([(3, 0), (-2, 5)]);

    [Fact]
    public void Parts_are_the_mean_over_all_orders_and_sum_to_the_whole() =>
        Gen.Int[0, 5].SelectMany(causes => Gen.Double[-50, 50].Array[1 << causes].Select(values => (causes, values))).Sample(sample =>
        {
            var (causes, values) = sample;
            var parts = ShapleyValue.Parts(causes, [.. values.Select(value => new[] { value })]);
            parts.Sum(part => part[0]).ShouldBe(values[^1] - values[0], 1e-9);
            for (var cause = 0; cause < causes; cause++)
            {
                parts[cause][0].ShouldBe(MeanOverOrders(causes, cause, values), 1e-9);
            }
        });

    [Fact]
    public void Too_many_causes_or_missing_sets_are_refused()
    {
        Should.Throw<StatisticsInputException>(() => ShapleyValue.Parts(13, []));
        Should.Throw<StatisticsInputException>(() => ShapleyValue.Parts(2, [[0], [1]]));
    }

    private static double MeanOverOrders(int causes, int cause, double[] values)
    {
        var orders = Orders([.. Enumerable.Range(0, causes)]).ToList();
        return orders.Average(order =>
        {
            var before = order.TakeWhile(one => one != cause).Aggregate(0, (set, one) => set | 1 << one);
            return values[before | 1 << cause] - values[before];
        });
    }

    private static IEnumerable<int[]> Orders(int[] all) =>
        all.Length == 0 ? [[]] : all.SelectMany(first => Orders([.. all.Where(one => one != first)]).Select(rest => (int[])[first, .. rest]));
}
