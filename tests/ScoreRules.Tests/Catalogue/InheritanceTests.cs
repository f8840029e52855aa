using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class InheritanceTests
{
    private const string Chain = """
        movement curl
          trains arms
          stretch is 2, set-up is 45 s
          at a guess grip is supinated
        movement cable curl
          like curl
          but stretch is 3
        movement low cable curl
          like cable curl
          but set-up is 60 s
        """;

    [Fact]
    public void Movements_stand_in_the_order_of_their_names_whatever_their_case()
    {
        var built = Built.From("movement Zercher squat\n  trains legs\nmovement curl\n  trains arms\nmovement Arm bar\n  trains arms");
        built.Catalogue.Movements.Select(movement => (movement.Index, movement.Name)).ShouldBe([(0, "Arm bar"), (1, "curl"), (2, "Zercher squat")]);
        built.Findings.ToSorted().ShouldBeEmpty();
    }

    [Fact]
    public void A_fact_that_nobody_states_is_not_said()
    {
        Built.From(Chain).Fact("low cable curl", "bench angle").ShouldBeSameAs(CatalogueFact.NotSaid);
    }

    [Fact]
    public void A_stated_fact_stands_before_an_inherited_one()
    {
        var built = Built.From(Chain);
        built.Fact("cable curl", "stretch").ShouldBe(built.Fact("cable curl", "stretch") with { Value = FactValue.Of(3), Origin = FactOrigin.Stated, InheritedFrom = null });
        built.Findings.ToSorted().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("stretch", "cable curl", "stretch is 3")]
    [InlineData("grip", "curl", "grip is supinated")]
    public void An_inherited_fact_names_the_movement_and_the_place_that_stated_it(string attribute, string from, string words)
    {
        var fact = Built.From(Chain).Fact("low cable curl", attribute);
        fact.InheritedFrom.ShouldBe(from);
        fact.Location.ShouldNotBeNull().Text.ShouldBe(words);
    }

    [Fact]
    public void Origins_tell_stated_inherited_and_guessed_facts_apart()
    {
        var built = Built.From(Chain);
        built.Fact("curl", "stretch").Origin.ShouldBe(FactOrigin.Stated);
        built.Fact("curl", "grip").Origin.ShouldBe(FactOrigin.Guessed);
        built.Fact("low cable curl", "stretch").Origin.ShouldBe(FactOrigin.Inherited);
        built.Fact("low cable curl", "set-up").Origin.ShouldBe(FactOrigin.Stated);
    }

    [Fact]
    public void A_guess_stays_a_guess_when_it_is_taken_over()
    {
        var fact = Built.From(Chain).Fact("low cable curl", "grip");
        (fact.Origin, fact.InheritedFrom).ShouldBe((FactOrigin.Guessed, "curl"));
    }

    [Fact]
    public void Stating_unknown_hides_what_would_be_inherited()
    {
        var built = Built.From("movement curl\n  trains arms\n  stretch is 2\nmovement cable curl\n  like curl\n  but stretch is unknown");
        var fact = built.Fact("cable curl", "stretch");
        (fact.Value.IsKnown, fact.Origin).ShouldBe((false, FactOrigin.Stated));
        built.Findings.ToSorted().ShouldBeEmpty();
    }

    [Fact]
    public void Targets_are_taken_over_only_when_none_are_stated()
    {
        var built = Built.From("movement curl\n  trains arms\nmovement cable curl\n  like curl\nmovement odd curl\n  like curl\n  trains legs");
        built.Movement("cable curl").Trains.ShouldHaveSingleItem().Name.ShouldBe("arms");
        built.Movement("odd curl").Trains.ShouldHaveSingleItem().Name.ShouldBe("legs");
    }

    [Fact]
    public void A_movement_may_be_like_the_synonym_of_another()
    {
        var movement = Built.From("movement curl\n  also known as biceps curl\n  trains arms\nmovement cable curl\n  like Biceps  Curl").Movement("cable curl");
        movement.Like.ShouldBe("curl");
        movement.Trains.ShouldHaveSingleItem();
    }

    [Fact]
    public void A_chain_as_long_as_a_catalogue_is_followed_to_its_end()
    {
        const int Length = 30_000;
        var links = Enumerable.Range(1, Length).Select(i => $"movement m{i}\n  like m{i - 1}\n");
        var built = Built.From("movement m0\n  trains arms\n  stretch is 4\n" + string.Concat(links));
        built.Fact($"m{Length}", "stretch").InheritedFrom.ShouldBe("m0");
        built.Findings.ToSorted().ShouldBeEmpty();
    }
}
