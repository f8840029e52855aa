using CsCheck;
using ScoreRules.Weighting;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Weighting;

public sealed class LogLeastSquaresTests
{
    /// <summary>Worked by hand: 18 is 1.5 times the one, and that is 3 times the other.</summary>
    [Fact]
    public void Given_weights_stay_and_the_others_follow_them() =>
        LogLeastSquares.Anchored([18, double.NaN, double.NaN], [new(0, 1, 1.5), new(1, 2, 3)]).ShouldBe([18, 12, 4], 1e-9);

    /// <summary>By hand: two given weights, 8 and 2, both said to equal the third, which lies between them by logarithms.</summary>
    [Fact]
    public void Between_two_given_weights_lies_their_geometric_mean() =>
        LogLeastSquares.Anchored([8, 2, double.NaN], [new(0, 2, 1), new(1, 2, 1)])[2].ShouldBe(4, 1e-9);

    /// <summary>By hand: a circle of four in which the product of the comparisons is 16 instead of 1; each takes a quarter of the fault.</summary>
    [Fact]
    public void A_circle_of_four_shares_its_fault_evenly()
    {
        var shares = LogLeastSquares.Shares(4, [new(0, 1, 2), new(1, 2, 2), new(2, 3, 2), new(3, 0, 2)]);
        shares.ShouldBe([0.25, 0.25, 0.25, 0.25], 1e-9);
    }

    [Fact]
    public void Comparisons_made_from_weights_give_those_weights_back() => Gen.Double[0.01, 100].Array[2, 9].Sample(weights =>
    {
        var chain = Enumerable.Range(1, weights.Length - 1).Select(i => new PairwiseComparison(i, i - 1, weights[i] / weights[i - 1])).ToList();
        LogLeastSquares.Shares(weights.Length, chain).ShouldBe(WeightVector.Normalised(weights), 1e-9);
    });

    [Fact]
    public void What_is_joined_to_nothing_given_is_refused()
    {
        ComparisonGraph.Parts(4, [new(0, 2, 1)]).Select(part => string.Join(",", part)).ShouldBe(["0,2", "1", "3"]);
        Should.Throw<ArgumentException>(() => LogLeastSquares.Anchored([1, double.NaN, double.NaN], [new(1, 2, 3)]));
    }
}
