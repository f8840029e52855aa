using ScoreRules.Weighting;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Weighting;

public sealed class ConsistencyTests
{
    /// <summary>Worked by hand: 2 and 3 make 6, where 1 is said.</summary>
    [Fact]
    public void The_worst_circle_is_the_one_furthest_off()
    {
        PairwiseComparison[] comparisons = [new(0, 1, 2), new(1, 2, 3), new(0, 2, 1), new(0, 3, 4), new(1, 3, 2), new(2, 3, 1)];
        var worst = CircularTriad.Worst(4, comparisons)!;
        (worst.First, worst.Second, worst.Third).ShouldBe((0, 1, 2));
        (worst.Implied, worst.FirstToThird, worst.Factor).ShouldBe((6, 1, 6));
    }

    [Fact]
    public void Comparisons_without_a_circle_cannot_contradict_one_another()
    {
        var ratio = ConsistencyRatio.Of(4, [new(0, 1, 9), new(1, 2, 9), new(2, 3, 9)]);
        (ratio.Value, ratio.Missing).ShouldBe((0, 3));
        CircularTriad.Worst(4, [new(0, 1, 9), new(1, 2, 9)]).ShouldBeNull();
    }

    /// <summary>Four of six pairs in a circle of twos: all weights equal, so the table is completed with ones; its largest eigenvalue, by hand, is 1 + 1 + 2.5 = 4.5, index 1/6; two of three possible circles are open, so a third of 0.8816.</summary>
    [Fact]
    public void A_circle_with_pairs_missing_is_measured_against_a_smaller_random_index() =>
        ConsistencyRatio.Of(4, [new(0, 1, 2), new(1, 2, 2), new(2, 3, 2), new(3, 0, 2)]).Value.ShouldBe(1.0 / 6 / (0.8816 / 3), 1e-9);
}
