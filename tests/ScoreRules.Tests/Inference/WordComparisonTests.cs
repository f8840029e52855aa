using ScoreRules.Language;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

public sealed class WordComparisonTests
{
    [Theory]
    [InlineData(Comparison.Is, "neutral", "+--?")]
    [InlineData(Comparison.OtherThan, "neutral", "-++?")]
    [InlineData(Comparison.OneOf, "neutral free", "+-+?")]
    [InlineData(Comparison.NoneOf, "neutral free", "-+-?")]
    [InlineData(Comparison.Known, "", "+++-")]
    [InlineData(Comparison.Unknown, "", "---+")]
    [InlineData(Comparison.AtLeast, "neutral", "---?")]
    public void One_word_is_compared(Comparison comparison, string words, string answer)
    {
        var scene = new Scene("a", "b", "c", "d");
        var grip = scene.Word("grip", "neutral pronated free", "neutral", "pronated", "free", null);
        scene.Answer(grip.That(comparison, words.Split(' ', StringSplitOptions.RemoveEmptyEntries))).ShouldBe(answer);
    }

    [Theory]
    [InlineData(Comparison.HasAny, "bench", "+--+?")]
    [InlineData(Comparison.HasAny, "bench cable", "++-+?")]
    [InlineData(Comparison.HasAll, "bench cable", "---+?")]
    [InlineData(Comparison.HasNone, "bench", "-++-?")]
    [InlineData(Comparison.HasNone, "bench cable", "--+-?")]
    [InlineData(Comparison.Known, "", "++++-")]
    [InlineData(Comparison.Unknown, "", "----+")]
    public void Lists_are_compared_and_nothing_is_a_known_list(Comparison comparison, string words, string answer)
    {
        var scene = new Scene("bench", "cable", "nothing", "both", "unknown");
        var kit = scene.List("kit", "bench cable bar", "bench", "cable", "", "bench cable", null);
        scene.Answer(kit.That(comparison, words.Split(' ', StringSplitOptions.RemoveEmptyEntries))).ShouldBe(answer);
    }

    [Fact]
    public void A_word_that_the_attribute_does_not_have_is_never_found()
    {
        var scene = new Scene("a", "b");
        var grip = scene.Word("grip", "neutral free", "neutral", null);
        var stray = new Language.Binding.AttributeTest(grip, Comparison.Is, double.NaN, double.NaN, [-1, 7], Ask.Here);
        scene.Answer(stray).ShouldBe("-?");
    }

    [Fact]
    public void A_fact_with_a_word_that_the_attribute_does_not_have_is_known_to_be_none_of_the_others()
    {
        var scene = new Scene("a", "b");
        var grip = scene.Word("grip", "neutral free", "neutral", "of another house");
        scene.Answer(grip.That(Comparison.OneOf, "neutral", "free")).ShouldBe("+-");
    }

    [Fact]
    public void Without_a_profile_the_person_is_known_to_be_none_of_the_words()
    {
        var scene = new Scene("a", "b");
        scene.Answer(scene.Person("audience", "novice pregnant").That(Comparison.HasAny, "pregnant")).ShouldBe("--");
    }

    [Fact]
    public void With_a_profile_the_person_has_its_words_for_every_movement()
    {
        var scene = new Scene("a", "b") { Audience = [1] };
        scene.Answer(scene.Person("audience", "novice pregnant").That(Comparison.HasAny, "pregnant")).ShouldBe("++");
    }

    [Fact]
    public void Likeness_is_read_by_row_and_unknown_where_it_cannot_be_told()
    {
        var scene = new Scene("a", "b", "c") { Likeness = [100, 84.9, double.NaN] };
        scene.Answer(scene.LikenessColumn().That(Comparison.AtLeast, 85)).ShouldBe("+-?");
    }
}
