using ScoreRules.Language.Overlays;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;
using static ScoreRules.Tests.Overlays.OverlayHouse;

namespace ScoreRules.Tests.Overlays;

/// <summary>What a house says in place of the house it builds on has its effect, and is told with both sources.</summary>
public sealed class OverlayEffectTests
{
    [Fact]
    public void A_house_that_changes_nothing_ranks_as_its_base_does()
    {
        var judgement = Judge(Quayside());

        judgement.Placements().ShouldBe(Judge().Placements());
        judgement.Ruleset.House!.Name.ShouldBe("Quayside");
        judgement.Ruleset.House.Judges.ShouldBe("muscle growth");
        judgement.Ruleset.House.Reasons.ShouldBe(2);
        judgement.Ruleset.Bases.ShouldBe([new BaseHouse("Longshore", "2.1.0")]);
        judgement.Ruleset.Amendments.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("counts half as much", "counts 15 parts give or take 3 parts")]
    [InlineData("counts twice as much", "counts 60 parts give or take 12 parts")]
    [InlineData("counts 1.5 times as much", "counts 45 parts give or take 9 parts")]
    [InlineData("counts 7 parts", "counts 7 parts")]
    public void A_changed_weight_ranks_as_if_the_base_were_written_so(string change, string written)
    {
        var changed = Judge(Quayside($"change criterion long\n  {change}\n"));
        var rewritten = ScoreRules.Judge.Run(Sources() with { Files = [Sources().Files[0] with { Text = Base.Replace("counts 30 parts give or take 6 parts", written, StringComparison.Ordinal) }] });

        changed.Found().ShouldBeEmpty();
        changed.Placements().ShouldBe(rewritten.Placements());
        changed.Placements().ShouldNotBe(Judge().Placements());
    }

    [Fact]
    public void What_is_replaced_is_told_with_both_sources()
    {
        var amendment = Judge(Quayside("change criterion long\n  counts 7 parts\n  because we stand close\n")).Ruleset.Amendments.ShouldHaveSingleItem();

        amendment.Title.ShouldBe("criterion \"long\"");
        (amendment.House, amendment.BaseHouse, amendment.Because).ShouldBe(("Quayside", "Longshore", "we stand close"));
        var line = amendment.Lines.ShouldHaveSingleItem();
        (line.NewText, line.New.ToString()).ShouldBe(("counts 7 parts", "floor-1/house.rules:6"));
        (line.OldText, line.Old!.ToString(), line.OldHouse).ShouldBe(("counts 30 parts give or take 6 parts", "floor-0/house.rules:38", "Longshore"));
    }

    [Fact]
    public void Facts_are_replaced_one_by_one()
    {
        var judgement = Judge(Quayside("change movement loose curl\n  steadiness is 4\n"));

        var movement = judgement.Catalogue.Find("loose curl")!;
        movement.Facts.Where(fact => fact.Value.IsKnown).Select(fact => fact.Value.Number).ShouldContain(4);
        judgement.Ruleset.Amendments.Single().Lines.Single().OldText.ShouldBe("steadiness is 0");
        judgement.Placements().ShouldContain(line => line.StartsWith("arms: loose curl, Keep", StringComparison.Ordinal));
    }

    [Fact]
    public void A_renamed_tier_is_followed_by_all_that_named_it()
    {
        var judgement = Judge(Quayside("change tiers\n  Level is now called Good enough\n\nexpect bar curl is in Good enough\n"));

        judgement.Found().ShouldBeEmpty();
        judgement.Ruleset.Tiers.Select(tier => tier.Name).ShouldBe(["Keep", "Good enough", "Swap"]);
        judgement.Ruleset.Limits.Single().Tier.Name.ShouldBe("Good enough");
        judgement.Expectations.ShouldAllBe(result => result.Holds);
    }

    [Fact]
    public void The_old_name_of_a_tier_is_refused_with_the_new_one() =>
        Judge(Quayside("change tiers\n  Level is now called Good enough\n\nexpect bar curl is in Level\n")).Found().ShouldBe(["SR2006 \"Level\" is now called \"Good enough\""]);

    [Fact]
    public void What_is_dropped_has_no_effect_and_stays_listed()
    {
        var judgement = Judge(Quayside("drop rule both at once\n  because nobody is\n"));

        judgement.Ruleset.Awards.ShouldBeEmpty();
        judgement.Ruleset.Amendments.Single().Action.ShouldBe(AmendmentAction.Dropped);
    }

    [Fact]
    public void What_still_uses_a_dropped_name_is_told_who_dropped_it()
    {
        var finding = Judge(Quayside("drop attribute reach\n  because we never measure it\n")).Findings.First(finding => finding.Code == "SR2003");

        finding.Headline.ShouldBe("\"reach\" was dropped, and is still used");
        finding.Others.Single().Text.ShouldBe("dropped by Quayside");
        finding.Others.Single().Location.Path.ShouldBe("floor-1/house.rules");
    }

    [Fact]
    public void Houses_of_a_chain_are_applied_from_the_base_up()
    {
        var top = "ruleset Harbour\n  version 1\n  builds on Quayside\n\nchange criterion long\n  counts twice as much\n";
        var judgement = Judge(Quayside("change criterion long\n  counts 8 parts\n"), top);

        judgement.Found().ShouldBeEmpty();
        judgement.Ruleset.Criteria.Single(criterion => criterion.Name == "long").Weights.Single().Amount!.Number.ShouldBe(16);
        judgement.Ruleset.Bases.Select(house => house.Name).ShouldBe(["Longshore", "Quayside"]);
        judgement.Ruleset.Amendments.Select(amendment => amendment.House).ShouldBe(["Quayside", "Harbour"]);
    }

    [Fact]
    public void Warnings_about_people_add_up() =>
        Judge(Quayside().Replace("builds on Longshore", "builds on Longshore\n  unsuitable for in pain", StringComparison.Ordinal)).Ruleset.House!.UnsuitableFor.ShouldBe(["in pain", "youth"]);

    [Fact]
    public void Expectations_of_the_base_are_tested_on_the_merged_house()
    {
        var judgement = Judge(Quayside("leave out long curl\n  because we have none\n"));
        judgement.Expectations.Single().Holds.ShouldBeFalse();
        judgement.Findings.Single(finding => finding.Code == "SR8001").Suggestions[^1].Advice.ShouldContain("drop expectation long curl is above bar curl");

        Judge(Quayside("leave out long curl\n  because we have none\n\ndrop expectation long curl is above bar curl\n  because we have none\n")).Expectations.ShouldBeEmpty();
    }

    [Fact]
    public void A_finding_in_a_changed_line_points_into_the_file_in_which_it_was_written()
    {
        var finding = Judge(Quayside("change criterion long\n  reads raech\n")).Findings.First(finding => finding.Code == "SR2003");

        finding.Location.Path.ShouldBe("floor-1/house.rules");
        NameText.Same(finding.Location.Text, "raech").ShouldBeTrue();
    }

    [Fact]
    public void A_benchmark_that_is_left_out_stays_as_the_yardstick()
    {
        var ranking = Judge(Quayside("leave out bar curl\n  because the bar is bent\n")).Rankings.Single();

        ranking.BenchmarkIsYardstickOnly.ShouldBeTrue();
        ranking.Placements.ShouldNotContain(placement => placement.IsBenchmark);
        ranking.LeftOut.Single().Row.Movement.Name.ShouldBe("bar curl");
    }
}
