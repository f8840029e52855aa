using ScoreRules.Explanation;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Publishing;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>The shipped houses hold what they expect, and where they differ from Longreach the trail names the rule of the house.</summary>
public sealed class ShippedHouseTests
{
    [Theory]
    [InlineData("harbour-lane", 8)]
    [InlineData("linden-court", 8)]
    [InlineData("longreach-second", 8)]
    public void A_house_has_nothing_to_mend_and_holds_what_it_expects(string folder, int least)
    {
        var judgement = Judged.House(folder);

        judgement.Findings.Select(DiagnosticText.Short).ShouldBeEmpty();
        judgement.Expectations.Count(result => result.Expectation.Info.Location.Path.Contains(folder, StringComparison.Ordinal)).ShouldBeGreaterThanOrEqualTo(least);
        judgement.Expectations.ShouldAllBe(result => result.Holds);
        judgement.Ruleset.Philosophy.Count(text => text.Location.Path.Contains(folder, StringComparison.Ordinal)).ShouldBeGreaterThanOrEqualTo(3);
    }

    [Theory]
    [InlineData("harbour-lane")]
    [InlineData("linden-court")]
    public void All_cautions_of_the_houses_below_are_there(string folder)
    {
        var cautions = Judged.House(folder).Ruleset.Cautions.Select(caution => caution.Text).ToHashSet(StringComparer.Ordinal);
        var below = Judged.Longreach.Ruleset.Cautions.Where(caution => folder == "harbour-lane" || caution.Info.Location.Path.Contains("shared", StringComparison.Ordinal));

        below.Select(caution => caution.Text).ShouldBeSubsetOf(cautions);
        cautions.Count.ShouldBeGreaterThan(29);
    }

    [Theory]
    [InlineData("harbour-lane", "elbow extensors", "overhead dumbbell extension", "needs a second person")]
    [InlineData("harbour-lane", "quadriceps", "rear-foot-elevated split squat", "much to learn")]
    [InlineData("harbour-lane", "deltoids", "cable lateral raise", "one cable column only")]
    [InlineData("linden-court", "quadriceps", "barbell back squat", "weight on the shoulders")]
    [InlineData("linden-court", "quadriceps", "sit-to-stand", "a thing you do every day")]
    [InlineData("linden-court", "gluteals", "walking lunge", "balance")]
    public void Where_a_house_differs_from_Longreach_the_trail_names_its_own_rule(string folder, string target, string movement, string rule)
    {
        var judgement = Judged.House(folder);
        var explained = judgement.Explain(target, movement);
        var before = Judged.Longreach.Explain(target, movement);

        explained.Placement!.Tier.Name.ShouldNotBe(before.Placement!.Tier.Name);
        var named = explained.Rules.Single(result => result.Rule.Info.Name == rule);
        named.Effect.ShouldBe(RuleEffect.Held);
        named.Rule.Info.Location.Path.ShouldContain(folder);
        new ExplanationText(judgement).Print(explained).ReplaceLineEndings(" ").ShouldContain(named.Rule.Info.Location.ToString());
    }

    [Fact]
    public void A_trail_shows_a_changed_rule_beside_what_the_base_says()
    {
        var text = string.Join(' ', new ExplanationText(Judged.HarbourLane).Print(Judged.HarbourLane.Explain("chest", "dumbbell fly")).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

        text.ShouldContain("Harbour Lane says \"counts twice as much\"");
        text.ShouldContain("where Longreach says \"counts 12 parts\"");
    }

    [Fact]
    public void The_leg_press_of_Harbour_Lane_is_there_from_its_day_on()
    {
        var later = Judge.Run(ScoreRules.Houses.HouseFolder.Read(Repository.PathOf("rulesets", "harbour-lane")), profile: null, new DateOnly(2032, 6, 1));

        later.Findings.Where(finding => finding.Severity == Severity.Error).ShouldBeEmpty();
        later.Target("quadriceps").Placements.ShouldContain(placement => placement.Row.Movement.Name == "leg press");
        Judged.HarbourLane.Target("quadriceps").LeftOut.ShouldContain(row => row.Row.Movement.Name == "leg press");
    }
}
