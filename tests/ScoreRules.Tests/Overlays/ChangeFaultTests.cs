using Shouldly;
using Xunit;
using static ScoreRules.Tests.Overlays.OverlayHouse;

namespace ScoreRules.Tests.Overlays;

/// <summary>Faults of changes that are told once, where the author can mend them, and changes that must not be lost.</summary>
public sealed class ChangeFaultTests
{
    private const string Word = "say a lot means 6 points\n\n";

    [Fact]
    public void A_word_given_another_meaning_in_one_line_has_its_effect()
    {
        var judgement = Judge(Middle(Word), Top("change say a lot means 9 points\n"));

        judgement.Found().ShouldBeEmpty();
        judgement.Ruleset.Words.Single().Number.ShouldBe(9);
        judgement.Ruleset.Amendments.Single().Title.ShouldBe("say \"a lot\"");
    }

    [Fact]
    public void A_word_given_a_meaning_without_a_unit_is_told() =>
        Judge(Middle(Word), Top("change say a lot means 1\n")).Found().ShouldBe(["SR3003 A word of the house means points, times or %"]);

    [Fact]
    public void A_tier_called_like_a_line_is_refused() =>
        Judge(Quayside("change tiers\n  Swap is now called we are sure\n")).Found().ShouldBe(["SR2111 A tier called \"we are sure\" would read like a line \"we are sure\""]);

    [Fact]
    public void A_tier_called_like_a_line_may_stand_in_quotes()
    {
        var judgement = Judge(Quayside("change tiers\n  Swap is now called \"we are sure\"\n"));

        judgement.Found().ShouldBeEmpty();
        judgement.Ruleset.Tiers[^1].Name.ShouldBe("we are sure");
    }

    [Fact]
    public void A_gap_between_changed_tiers_is_told_at_the_changed_line()
    {
        var house = Quayside("change tiers\n  Level is within 3 points of the benchmark\n");
        var finding = Judge(house).Findings.Single(finding => finding.Code == "SR5002");

        finding.Location.Path.ShouldBe("floor-1/house.rules");
        finding.Location.Text.ShouldBe("Level is within 3 points of the benchmark");
    }

    // The narrower order of two: 3/4 and 1/4 (Barron and Barrett 1996), the other way round for the target that the top house names.
    [Fact]
    public void Weights_for_a_target_may_be_added_on_top_of_weights_for_all()
    {
        var judgement = Judge(
            Middle("change criterion steady\n  counts by weights\n\nchange criterion long\n  counts by weights\n\nweights\n  order steady, long\n"),
            Top("weights\n  order long, steady\n  only for arms\n"));

        judgement.Found().ShouldBeEmpty();
        judgement.Ruleset.Criteria.Single(criterion => criterion.Name == "steady").Weights.Single().Amount!.Number.ShouldBe(25, 1e-9);
    }

    private static string Middle(string says) => Quayside(says);

    private static string Top(string says) => $"ruleset Pierhead\n  version 1.0.0\n  builds on Quayside\n\n{says}\n";
}
