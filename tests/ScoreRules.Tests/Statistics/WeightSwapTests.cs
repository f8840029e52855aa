using System.Text.Json;
using CsCheck;
using ScoreRules.Statistics;
using ScoreRules.Statistics.Sensitivity;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Smallest changes of weights against exact fractions, to 1e-12.</summary>
public sealed class WeightSwapTests
{
    private const double Tolerance = 1e-12;

    [Fact]
    public void Every_case_equals_the_exact_fractions()
    {
        foreach (var item in Pins.Json("05-weight-swap.json").GetProperty("cases").EnumerateArray())
        {
            var swap = WeightSwap.Of(item.GetProperty("weights").Values(), item.GetProperty("a").Values(), item.GetProperty("b").Values());
            swap.Gap.ShouldBe(item.GetProperty("gap").Value(), Tolerance);
            if (item.TryGetProperty("impossible", out _))
            {
                swap.IsPossible.ShouldBeFalse();
                swap.LeastSquares().ShouldBeNull();
                Enumerable.Range(0, 3).Select(swap.Single).ShouldAllBe(share => share == null);
                continue;
            }

            var wanted = item.GetProperty(item.TryGetProperty("constrained_least_squares_new", out _) ? "constrained_least_squares_new" : "least_squares_new").Values();
            swap.LeastSquares().ShouldNotBeNull().ShouldBe(wanted, Tolerance);
            Singles(swap, item.GetProperty("single_weight_target_others_rescaled"));
            Transfers(swap, item.GetProperty("transfer_between_two"), wanted.Length);
        }
    }

    /// <summary>
    /// By hand, in points of weight that need not total 100: 60, 40; values 1, 0 against 0, 1 in points; awards -0.1. Adding x to the second
    /// brings level 60 - 40 - x - 0.1 (100 + x) = 0, so x = 10 / 1.1, and the share of the second is (40 + x) / (100 + x) = 0.45.
    /// </summary>
    [Fact]
    public void Awards_are_part_of_the_gap()
    {
        var swap = WeightSwap.Of([60, 40], [1, 0], [0, 1], -0.1);
        swap.Single(1)!.Value.ShouldBe((40 + (10 / 1.1)) / (100 + (10 / 1.1)), Tolerance);
        swap.Transfer(0, 1)!.Value.ShouldBe(0.05, Tolerance);
        swap.LeastSquares()!.ShouldBe([0.55, 0.45], Tolerance);
    }

    /// <summary>By hand: level only where all weight lies on the one criterion on which they are equal, or nearly so.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(-7e-18)]
    [InlineData(-1e-8)]
    public void Weights_at_the_edge_of_the_possible_are_found(double difference)
    {
        var found = WeightSwap.Of([0.2, 0.5, 0.3], [difference, 9, 1], [0, 5, 0.5]).LeastSquares().ShouldNotBeNull();
        found.ShouldBe([1, 0, 0], 1e-7);
    }

    [Fact]
    public void New_weights_bring_level_and_no_level_weights_are_nearer() => Gen.Select(Gen.Double[0.01, 1].Array[4], Gen.Double[0, 10].Array[4], Gen.Double[0, 10].Array[4], Gen.Double[0.01, 1].Array[4]).Sample((weights, first, second, other) =>
    {
        var swap = WeightSwap.Of(weights, first, second);
        if (swap.LeastSquares() is not { } found)
        {
            swap.IsPossible.ShouldBeFalse();
            return;
        }

        found.Sum().ShouldBe(1, 1e-9);
        found.ShouldAllBe(weight => weight >= 0);
        found.Select((weight, k) => weight * (first[k] - second[k])).Sum().ShouldBe(0, 1e-9);
        double[] start = [.. weights.Select(weight => weight / weights.Sum())];
        if (WeightSwap.Of(other, first, second).LeastSquares() is { } elsewhere)
        {
            Distance(start, found).ShouldBeLessThanOrEqualTo(Distance(start, elsewhere) + 1e-9);
        }
    });

    [Fact]
    public void Bad_weights_are_refused_in_words()
    {
        Should.Throw<StatisticsInputException>(() => WeightSwap.Of([1, -1], [1, 2], [2, 1])).Message.ShouldBe("A weight must not be below 0, but is -1.");
        Should.Throw<StatisticsInputException>(() => WeightSwap.Of([1], [1, 2], [2])).Message.ShouldBe("Weights and values must be equally many, but are 1 and 2.");
    }

    private static double Distance(double[] from, IReadOnlyList<double> to) => from.Zip(to, (a, b) => (a - b) * (a - b)).Sum();

    private static void Singles(WeightSwap swap, JsonElement expected)
    {
        foreach (var (k, target) in expected.EnumerateArray().Index())
        {
            if (target.ValueKind == JsonValueKind.Null)
            {
                swap.Single(k).ShouldBeNull();
            }
            else
            {
                swap.Single(k).ShouldNotBeNull().ShouldBe(target.Value(), Tolerance);
            }
        }
    }

    private static void Transfers(WeightSwap swap, JsonElement expected, int count)
    {
        for (var from = 0; from < count; from++)
        {
            for (var to = 0; to < count; to++)
            {
                if (expected.TryGetProperty($"{from + 1}->{to + 1}", out var share))
                {
                    swap.Transfer(from, to).ShouldNotBeNull().ShouldBe(share.Value(), Tolerance);
                }
                else
                {
                    swap.Transfer(from, to).ShouldBeNull($"{from + 1}->{to + 1}");
                }
            }
        }
    }
}
