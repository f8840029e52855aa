using ScoreRules.Language;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

/// <summary>Tests that several rules share are answered once; tests that differ in anything are not mixed up.</summary>
public sealed class SharedTestsTests
{
    private readonly Scene scene = new("a", "b", "c");

    [Fact]
    public void The_same_test_in_two_rules_is_answered_once()
    {
        var stretch = scene.Rating("stretch", 1, 2, 3);
        scene.Acting.Add(Ask.Give(stretch.That(Comparison.AtLeast, 2)));
        scene.Acting.Add(Ask.Give(Ask.Unless(stretch.That(Comparison.AtLeast, 2))));
        scene.Infer().Evaluator.TestCount.ShouldBe(1);
    }

    [Fact]
    public void Tests_that_differ_in_the_low_end_are_two() =>
        Both(scene.Rating("stretch", 1, 2, 3), (Comparison.Between, 1, 3), (Comparison.Between, 2, 3)).ShouldBe(("+++", "-++"));

    [Fact]
    public void Tests_that_differ_in_the_high_end_are_two() =>
        Both(scene.Rating("stretch", 1, 2, 3), (Comparison.Between, 1, 2), (Comparison.Between, 1, 3)).ShouldBe(("++-", "+++"));

    [Fact]
    public void Tests_that_differ_in_the_comparison_are_two() =>
        Both(scene.Rating("stretch", 1, 2, 3), (Comparison.AtLeast, 2, double.NaN), (Comparison.AtMost, 2, double.NaN)).ShouldBe(("-++", "++-"));

    [Fact]
    public void Tests_that_differ_in_the_words_are_two()
    {
        var grip = scene.Word("grip", "free fixed", "free", "fixed", null);
        Both(grip.That(Comparison.Is, "free"), grip.That(Comparison.Is, "fixed")).ShouldBe(("+-?", "-+?"));
    }

    [Fact]
    public void Tests_that_differ_in_the_last_word_are_two()
    {
        var kit = scene.List("kit", "bench cable bar", "bench cable", "bench bar", "bench");
        Both(kit.That(Comparison.HasAll, "bench", "cable"), kit.That(Comparison.HasAll, "bench", "bar")).ShouldBe(("+--", "-+-"));
    }

    [Fact]
    public void Tests_that_differ_in_the_attribute_are_two()
    {
        var (stretch, support) = (scene.Rating("stretch", 1, 2, 3), scene.Rating("support", 3, 2, 1));
        Both(stretch.That(Comparison.AtLeast, 3), support.That(Comparison.AtLeast, 3)).ShouldBe(("--+", "+--"));
    }

    private (string First, string Second) Both(AttributeDefinition attribute, (Comparison How, double Number, double High) first, (Comparison How, double Number, double High) second) =>
        Both(attribute.That(first.How, first.Number, first.High), attribute.That(second.How, second.Number, second.High));

    private (string First, string Second) Both(Condition first, Condition second)
    {
        var (one, other) = (Ask.Give(first), Ask.Give(second));
        scene.Acting.AddRange([one, other]);
        var inferred = scene.Infer();
        return (Scene.Signs(inferred.Outcome(one).Condition), Scene.Signs(inferred.Outcome(other).Condition));
    }
}
