using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Tiering;

/// <summary>A personal judgement shifts by one tier, after limits, and never over a cap that asks who somebody is.</summary>
public sealed class JudgementRuleTests
{
    private const string House = """
        ruleset Quayside
          version 1
          allows its authors 1 personal judgement

        attribute reach
          rated 0 to 4

        attribute audience
          some of older adult
          about the person

        muscle biceps

        target arms
          made of biceps 100 parts
          benchmark low

        tiers
          Keep is from 50 points above the benchmark
          Good is from 10 points above the benchmark
          Level is the rest

        criterion long
          counts 10 parts
          reads reach
          worth 0% at 0, 100% at 4

        movement low
          trains arms
          reach is 0

        movement mid
          trains arms
          reach is 1

        movement high
          trains arms
          reach is 4

        profile grandmother
          audience older adult

        """;

    [Theory]
    [InlineData("high", "lower", "Good")]
    [InlineData("high", "higher", "Keep")]
    [InlineData("mid", "higher", "Keep")]
    [InlineData("mid", "lower", "Level")]
    [InlineData("low", "lower", "Level")]
    public void A_judgement_shifts_by_one_tier_and_not_past_the_ends(string movement, string way, string tier)
    {
        var placement = Judged.Text($"{House}place {movement}\n  one tier {way}\n  because we see it\n").Target("arms").Placements.Single(placement => placement.Row.Movement.Name == movement);

        placement.Tier.Name.ShouldBe(tier);
        placement.Judgement!.Info.Because.ShouldBe("we see it");
    }

    [Theory]
    [InlineData("reach is 1", "Keep")]
    [InlineData("audience has older adult", "Good")]
    public void Only_a_cap_that_asks_who_somebody_is_stops_a_judgement(string condition, string tier)
    {
        var text = $"{House}never above Good\n  when {condition}\n\nplace mid\n  one tier higher\n  because we see it\n";
        var judgement = Judge.Run(new ScoreRules.Houses.HouseSources([new("house.rules", text, "", IsSpreadsheet: false)], []), "grandmother");

        judgement.Target("arms").Placements.Single(placement => placement.Row.Movement.Name == "mid").Tier.Name.ShouldBe(tier);
    }

    [Fact]
    public void Judgements_are_counted_against_what_the_house_allows() =>
        Judged.Text($"{House}place mid\n  one tier higher\n  because we see it\n\nplace high\n  one tier lower\n  because we see it\n").Findings.Select(finding => finding.Code).ShouldContain("SR5020");
}
