using ScoreRules.Language.Diagnostics;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class MovementFindingsTests
{
    [Fact]
    public void A_movement_without_a_target_is_an_error_at_its_name()
    {
        var built = Built.From("movement curl\n  stretch is 2\nmovement squat\n  trains legs");
        Told.Places(built.Findings).ShouldBe(["SR7001 [movement curl]"]);
        var finding = Told.Only(built.Findings);
        finding.Severity.ShouldBe(Severity.Error);
        finding.Headline.ShouldBe("\"curl\" trains no target, so it is ranked nowhere");
        finding.Notes.ShouldBe(["targets of this house: arms, triceps, legs"]);
        finding.Suggestions.ShouldHaveSingleItem().Advice.ShouldBe("add a line such as \"trains arms\"");
    }

    [Fact]
    public void Being_like_a_movement_without_a_target_does_not_help_and_its_like_is_shown()
    {
        var built = Built.From("movement curl\nmovement cable curl\n  like curl");
        Told.Places(built.Findings).ShouldBe(["SR7001 [movement curl]", "SR7001 [movement cable curl]"]);
        var other = built.Findings.ToSorted()[1].Others.ShouldHaveSingleItem();
        (other.Location.Text, other.Text).ShouldBe(("curl", "\"curl\" trains none either"));
    }

    [Fact]
    public void A_target_that_was_not_understood_is_reported_once_only_where_it_stands()
    {
        Built.From("movement curl\n  trains ?\nmovement cable curl\n  like curl").Findings.ToSorted().ShouldBeEmpty();
    }

    [Fact]
    public void A_like_that_was_not_understood_is_reported_once_only_where_it_stands()
    {
        Built.From("movement curl\n  like ?\n  but stretch is 2\nmovement cable curl\n  like curl\n  but grip is neutral").Findings.ToSorted().ShouldBeEmpty();
    }

    [Fact]
    public void A_like_that_names_no_movement_is_an_error_with_the_nearest_name()
    {
        var built = Built.From("movement curl\n  trains arms\nmovement cable curl\n  like crul");
        Told.Places(built.Findings).ShouldBe(["SR2004 [crul]"]);
        Told.Mended(Told.Only(built.Findings)).ShouldNotBeNull().ShouldEndWith("  like curl");
        built.Movement("cable curl").Like.ShouldBeNull();
    }

    [Fact]
    public void A_circle_is_one_error_that_names_all_its_movements_from_the_first_by_name()
    {
        var built = Built.From("movement c\n  like a\n  stretch is 1\nmovement a\n  like b\nmovement b\n  like c\nmovement d\n  like c\n  but stretch is 2");
        var finding = Told.Only(built.Findings);
        finding.Code.ShouldBe("SR7006");
        finding.Headline.ShouldBe("Movements are like one another in a circle: \"a\" is like \"b\", \"b\" is like \"c\", \"c\" is like \"a\"");
        (finding.Location.Text, finding.Location.Line).ShouldBe(("b", 5));
        finding.Others.Select(other => (other.Location.Text, other.Location.Line)).ShouldBe([("c", 7), ("a", 2)]);
    }

    [Fact]
    public void A_circle_is_told_from_its_first_member_wherever_others_hang_on_to_it()
    {
        var built = Built.From("movement a\n  like c\nmovement b\n  like c\nmovement c\n  like b");
        Told.Only(built.Findings).Headline.ShouldBe("Movements are like one another in a circle: \"b\" is like \"c\", \"c\" is like \"b\"");
    }

    [Fact]
    public void Movements_in_a_circle_are_like_nobody_and_those_outside_still_inherit_what_they_state()
    {
        var built = Built.From("movement a\n  like b\nmovement b\n  like a\n  stretch is 1\nmovement d\n  like b");
        built.Movement("a").Like.ShouldBeNull();
        built.Movement("b").Like.ShouldBeNull();
        built.Fact("d", "stretch").InheritedFrom.ShouldBe("b");
    }

    [Fact]
    public void A_movement_that_is_like_itself_is_a_circle_of_one()
    {
        Told.Places(Built.From("movement curl\n  trains arms\n  like curl").Findings).ShouldBe(["SR7006 [curl]"]);
    }

    [Fact]
    public void Two_circles_are_two_errors()
    {
        Told.Places(Built.From("movement a\n  like b\nmovement b\n  like a\nmovement y\n  like z\nmovement z\n  like y").Findings)
            .ShouldBe(["SR7006 [b]", "SR7006 [z]"]);
    }

    [Fact]
    public void A_long_circle_names_eight_links_and_the_number_of_its_movements()
    {
        var built = Built.From(string.Concat(Enumerable.Range(10, 12).Select(i => $"movement m{i}\n  like m{((i - 9) % 12) + 10}\n")));
        Told.Only(built.Findings).Headline.ShouldEndWith("\"m17\" is like \"m18\" and so on, 12 movements in all");
    }

    [Fact]
    public void Of_two_movements_with_one_name_the_first_by_place_is_kept()
    {
        var built = Built.From(MovementText.Parse("movement curl\n  trains legs", "b.rules").AddRange(MovementText.Parse("movement Curl\n  trains arms", "a.rules")));
        built.Catalogue.Movements.ShouldHaveSingleItem().Name.ShouldBe("Curl");
    }
}
