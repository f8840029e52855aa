using ScoreRules.Publishing.Editions;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Publishing.Editions;

public sealed class EditionListTests
{
    [Fact]
    public void Every_kind_of_change_is_told_apart()
    {
        var older = Published.Edition("1", "2031-01-01", Published.Target("calves", ("a", "High", 90), ("b", "High", 80), ("c", "Low", 20), ("d", "Low", 10), ("e", null, 50), ("g", "Low", 5.01)));
        var newer = Published.Edition("2", "2031-02-01", Published.Target("calves", ("b", "Low", 30), ("a", "High", 90), ("f", "High", 60), ("g", "Low", 5.04), ("d", null, 10), ("e", "Low", 50)), Published.Target("neck", ("a", "High", 1)));
        Published.Between(older, newer).Select(change => (change.Target, change.Movement, change.Kind)).ShouldBe(
        [
            ("calves", "b", ChangeKind.OtherTier),
            ("calves", "c", ChangeKind.Gone),
            ("calves", "d", ChangeKind.LeftOut),
            ("calves", "e", ChangeKind.TakenIn),
            ("calves", "f", ChangeKind.New),
            ("neck", "a", ChangeKind.New),
        ]);
    }

    [Fact]
    public void An_edition_has_no_difference_from_itself()
    {
        var edition = Published.Edition("1", "2031-01-01", Published.Target("calves", ("a", "High", 90), ("b", null, 80)));
        Published.Between(edition, edition).ShouldBeEmpty();
    }

    [Fact]
    public void Neighbours_are_of_one_house_by_day_then_by_version_number_by_number()
    {
        PublishedEdition[] editions =
        [
            Published.Of("Willow", "w-310", "3.10.0", "2031-05-01"), Published.Of("Alder", "a", "1", "2031-01-01"), Published.Of("willow", "w-39", "3.9.0", "2031-05-01"),
            Published.Of("Willow", "w-4", "4.0.0", "2030-01-01"),
        ];
        foreach (var order in new[] { editions, [.. editions.Reverse()] })
        {
            var list = EditionList.Of(order, new PlacementDifference());
            list.Houses.Select(house => house.House).ShouldBe(["Alder", "Willow"]);
            list.Houses[1].Editions.Select(listed => (listed.Edition.Name, listed.Before?.Name)).ShouldBe([("w-310", "w-39"), ("w-39", "w-4"), ("w-4", null)]);
        }
    }

    [Fact]
    public void The_page_says_first_the_cautions_then_what_changed_since_which_edition()
    {
        var older = Published.Edition("1", "2031-01-01", Published.Target("lower legs", ("plain raise", "High", 90), ("bent raise", "Low", 20.05))).Showing("Stop at pain.", "Mind the step.");
        var newer = Published.Edition("2", "2031-02-01", Published.Target("lower legs", ("plain raise", "Low", 40.04), ("bent raise", "Low", 25))).Showing("Stop at pain.", "Hold a rail.");
        var page = EditionListMarkdown.Print(EditionList.Of([newer, older], new PlacementDifference()));
        page.ShouldStartWith("# Willow: editions\n\nEducation, not medical advice. Your gym's rules, local codes and licensed professionals come first.\n\n**First:** Stop at pain.\n\n## Willow\n\n### Version 2, 1 February 2031\n");
        page.ShouldContain("**What changed.** Since 1 January 2031 (edition abc1): 1 placement changed; 1 movement has other points in the same tier.\n\nNew caution: Hold a rail.\n\nNo longer shown, because its words changed or its movements are gone: Mind the step.\n\nLower legs:\n\n- plain raise: from High to Low, 90.0 to 40.0 points\n");
        page.ShouldEndWith("**What changed.** The first edition here.\n");
    }

    [Fact]
    public void A_caution_of_one_house_stands_under_its_name_and_one_of_all_at_the_top()
    {
        var willow = Published.Of("Willow", "w", "1", "2031-01-01") with { CautionsForAll = ["Stop at pain.", "Hold a rail."] };
        var alder = Published.Of("Alder", "a", "1", "2031-01-01") with { CautionsForAll = ["Stop at pain."] };
        var page = EditionListMarkdown.Print(EditionList.Of([willow, alder], new PlacementDifference()));
        page.ShouldContain("professionals come first.\n\n**First:** Stop at pain.\n\n## Alder\n\n### ");
        page.ShouldContain("## Willow\n\n**First:** Hold a rail.\n\n### ");
    }

    [Fact]
    public void A_name_that_means_something_to_markdown_is_taken_literally()
    {
        var older = Published.Edition("1", "2031-01-01", Published.Target("legs", ("a", "High", 90)));
        var newer = Published.Edition("2", "2031-02-01", Published.Target("legs", ("a", "High", 90), ("<b>*x*|", "Low", 1)));
        EditionListMarkdown.Print(EditionList.Of([older, newer], new PlacementDifference())).ShouldContain(@"- \<b\>\*x\*\|: new, in Low with 1.0 points");
    }
}
