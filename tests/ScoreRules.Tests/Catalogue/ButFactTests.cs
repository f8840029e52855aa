using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class ButFactTests
{
    private const string Curl = "movement curl\n  trains arms\n  stretch is 2, set-up is 45 s\n";

    [Fact]
    public void But_in_a_movement_like_no_other_is_an_error_and_can_be_left_out()
    {
        var finding = Told.Only(Built.From("movement curl\n  trains arms\n  but stretch is 2\n").Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7004", "stretch is 2"));
        finding.Headline.ShouldBe("\"but\" replaces an inherited fact, and \"curl\" is like no other movement");
        Told.Mended(finding).ShouldBe("movement curl\n  trains arms\n  stretch is 2\n");
    }

    [Fact]
    public void But_where_nothing_is_inherited_is_an_error_that_shows_the_like()
    {
        var finding = Told.Only(Built.From(Curl + "movement cable curl\n  like curl\n  but grip is neutral").Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7004", "grip is neutral"));
        finding.Headline.ShouldBe("\"but\" replaces an inherited fact, and \"curl\" says nothing about \"grip\"");
        var other = finding.Others.ShouldHaveSingleItem();
        (other.Location.Text, other.Text).ShouldBe(("curl", "says nothing about \"grip\""));
    }

    [Fact]
    public void But_before_a_guess_is_left_out_alone()
    {
        var finding = Told.Only(Built.From("movement curl\n  trains arms\n  but at a guess stretch is 2").Findings);
        Told.Mended(finding).ShouldBe("movement curl\n  trains arms\n  at a guess stretch is 2");
    }

    [Fact]
    public void But_is_not_taken_from_a_line_that_holds_another_fact()
    {
        var built = Built.From(Curl + "movement cable curl\n  like curl\n  but stretch is 3, grip is neutral");
        Told.Places(built.Findings).ShouldBe(["SR7004 [grip is neutral]"]);
        Told.Offered(Told.Only(built.Findings)).ShouldBeEmpty();
        Told.Only(built.Findings).Suggestions.ShouldHaveSingleItem().Advice.ShouldBe("give it a line of its own without \"but\": \"grip is neutral\"");
    }

    [Fact]
    public void A_fact_that_replaces_an_inherited_one_silently_is_an_error_and_but_can_be_put_in()
    {
        var finding = Told.Only(Built.From(Curl + "movement cable curl\n  like curl\n  stretch is 3\n").Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7005", "stretch is 3"));
        finding.Headline.ShouldBe("\"cable curl\" already takes \"stretch\" over from \"curl\"");
        var other = finding.Others.ShouldHaveSingleItem();
        (other.Location.Text, other.Location.Line, other.Text).ShouldBe(("stretch is 2", 3, "stated here for \"curl\""));
        Told.Mended(finding).ShouldBe(Curl + "movement cable curl\n  like curl\n  but stretch is 3\n");
    }

    [Fact]
    public void The_inherited_line_is_shown_where_it_was_stated_however_far_up()
    {
        var built = Built.From(Curl + "movement cable curl\n  like curl\nmovement low cable curl\n  like cable curl\n  stretch is 3");
        Told.Only(built.Findings).Others.ShouldHaveSingleItem().Location.Line.ShouldBe(3);
    }

    [Fact]
    public void But_goes_before_the_words_of_a_guess()
    {
        var finding = Told.Only(Built.From(Curl + "movement cable curl\n  like curl\n  at a guess stretch is 3").Findings);
        Told.Mended(finding).ShouldNotBeNull().ShouldEndWith("\n  but at a guess stretch is 3");
    }

    [Theory]
    [InlineData("  stretch is 3, grip is neutral")]
    [InlineData("  grip is neutral, stretch is 3")]
    [InlineData("  grip is neutral,\n    stretch is 3")]
    public void But_is_not_put_into_a_line_that_holds_another_fact(string line)
    {
        var finding = Told.Only(Built.From(Curl + "movement cable curl\n  like curl\n" + line).Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7005", "stretch is 3"));
        Told.Offered(finding).ShouldBeEmpty();
        finding.Suggestions[0].Advice.ShouldBe("if that is meant, give it a line of its own: \"but stretch is 3\"");
    }

    [Fact]
    public void Every_edit_that_needs_no_asking_removes_its_finding_and_adds_none()
    {
        foreach (var text in new[]
        {
            "movement curl\n  trains arms\n  but stretch is 2",
            "movement curl\n  trains arms\n  but at a guess stretch is 2",
            Curl + "movement cable curl\n  like curl\n  stretch is 3",
            Curl + "movement cable curl\n  like curl\n  at a guess stretch is 3",
        })
        {
            var mended = Told.Mended(Told.Only(Built.From(text).Findings)).ShouldNotBeNull();
            Built.From(mended).Findings.ToSorted().ShouldBeEmpty(mended);
        }
    }

    [Fact]
    public void An_attribute_stated_twice_is_an_error_at_the_second_and_the_first_counts()
    {
        var built = Built.From("movement curl\n  trains arms\n  stretch is 2\n  grip is neutral, stretch is 3");
        var finding = Told.Only(built.Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7008", "stretch is 3"));
        finding.Headline.ShouldBe("\"curl\" states \"stretch\" twice");
        finding.Others.ShouldHaveSingleItem().Location.Text.ShouldBe("stretch is 2");
        built.Fact("curl", "stretch").Value.ShouldBe(FactValue.Of(2));
    }

    [Fact]
    public void Twice_with_and_without_but_is_still_twice()
    {
        Told.Places(Built.From(Curl + "movement cable curl\n  like curl\n  but stretch is 3\n  stretch is 4").Findings).ShouldBe(["SR7008 [stretch is 4]"]);
    }
}
