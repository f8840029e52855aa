using ScoreRules.Language;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

public sealed class NumberComparisonTests
{
    [Theory]
    [InlineData(Comparison.Is, 2, double.NaN, "-+-?")]
    [InlineData(Comparison.OtherThan, 2, double.NaN, "+-+?")]
    [InlineData(Comparison.AtLeast, 2, double.NaN, "-++?")]
    [InlineData(Comparison.AtMost, 2, double.NaN, "++-?")]
    [InlineData(Comparison.MoreThan, 2, double.NaN, "--+?")]
    [InlineData(Comparison.LessThan, 2, double.NaN, "+--?")]
    [InlineData(Comparison.Between, 1, 2, "++-?")]
    [InlineData(Comparison.Between, 2, 3, "-++?")]
    [InlineData(Comparison.Known, double.NaN, double.NaN, "+++-")]
    [InlineData(Comparison.Unknown, double.NaN, double.NaN, "---+")]
    public void Ratings_one_two_three_and_unknown_are_compared(Comparison comparison, double number, double high, string answer)
    {
        var scene = new Scene("a", "b", "c", "d");
        var rating = scene.Rating("long tension", 1, 2, 3, null);
        scene.Answer(rating.That(comparison, number, high)).ShouldBe(answer);
    }

    [Theory]
    [InlineData(Comparison.Is, "+--")]
    [InlineData(Comparison.AtMost, "+-+")]
    [InlineData(Comparison.AtLeast, "++-")]
    [InlineData(Comparison.MoreThan, "-+-")]
    [InlineData(Comparison.LessThan, "--+")]
    public void Numbers_that_differ_by_less_than_a_billionth_are_the_same(Comparison comparison, string answer)
    {
        var scene = new Scene("a sum", "just above", "just below");
        var step = scene.Measure("smallest step", 0.1 + 0.2, 0.300000002, 0.299999998);
        scene.Answer(step.That(comparison, 0.3)).ShouldBe(answer);
    }

    [Fact]
    public void The_end_asked_for_is_rounded_as_well()
    {
        var scene = new Scene("a");
        var step = scene.Measure("step", 0.3);
        scene.Answer(step.That(Comparison.AtLeast, 0.1 + 0.2)).ShouldBe("+");
        scene.Answer(step.That(Comparison.Between, 0, 0.2999999999)).ShouldBe("+");
    }

    [Theory]
    [InlineData(Comparison.HasAny, "-?")]
    [InlineData(Comparison.HasAll, "-?")]
    [InlineData(Comparison.HasNone, "+?")]
    [InlineData(Comparison.OneOf, "-?")]
    [InlineData(Comparison.NoneOf, "+?")]
    [InlineData(Comparison.Called, "-?")]
    public void A_senseless_question_is_answered_without_a_fault(Comparison comparison, string answer)
    {
        var scene = new Scene("a", "b");
        scene.Answer(scene.Rating("stretch", 1, null).That(comparison, 1)).ShouldBe(answer);
    }

    [Fact]
    public void A_number_that_is_none_counts_as_unknown()
    {
        var scene = new Scene("a", "b", "c");
        scene.Answer(scene.Measure("step", double.NaN, double.PositiveInfinity, 1).That(Comparison.AtLeast, 1)).ShouldBe("??+");
    }

    [Fact]
    public void More_than_a_word_of_rows_is_compared_to_the_last_one()
    {
        var names = Enumerable.Range(0, 131).Select(index => $"m{index}").ToArray();
        var scene = new Scene(names);
        var rating = scene.Rating("stretch", [.. names.Select((_, index) => index % 7 == 0 ? null : (double?)(index % 5))]);
        var expected = string.Concat(names.Select((_, index) => index % 7 == 0 ? '?' : index % 5 >= 3 ? '+' : '-'));
        scene.Answer(rating.That(Comparison.AtLeast, 3)).ShouldBe(expected);
    }
}
