using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

public sealed class LongreachTests
{
    [Fact]
    public void It_has_nothing_to_mend_and_all_its_expectations_hold()
    {
        Judged.Longreach.Findings.Select(DiagnosticText.Short).ShouldBeEmpty();
        Judged.Longreach.Expectations.Length.ShouldBe(21);
        Judged.Longreach.Expectations.Where(result => !result.Holds).ShouldBeEmpty();
    }

    [Fact]
    public void Every_one_of_130_movements_is_placed_or_left_out_with_a_reason()
    {
        var judgement = Judged.Longreach;
        judgement.Catalogue.Movements.Length.ShouldBe(130);
        judgement.Rankings.Count(ranking => ranking.Target.Parent is null).ShouldBe(9);

        var placed = judgement.Rankings.SelectMany(ranking => ranking.Placements.Select(placement => placement.Row.Movement.Name)).ToHashSet();
        var leftOut = judgement.Rankings.SelectMany(ranking => ranking.LeftOut).ToList();
        leftOut.ShouldAllBe(row => row.Rules.Length > 0 && row.Rules[0].Info.Because != null);
        judgement.Catalogue.Movements.ShouldAllBe(movement => placed.Contains(movement.Name) || leftOut.Any(row => row.Row.Movement == movement));
    }

    [Fact]
    public void Without_a_profile_no_caution_is_undecided_and_no_referral_shows()
    {
        foreach (var ranking in Judged.Longreach.Rankings)
        {
            foreach (var placement in ranking.Placements)
            {
                var cautions = Judged.Longreach.Explainer!.CautionsOf(placement.Row);
                cautions.Where(caution => caution.IsUndecided).ShouldBeEmpty(placement.Row.Movement.Name);
                cautions.Where(caution => caution.Caution.Place == CautionPlace.AboveTheRanking).ShouldBeEmpty(placement.Row.Movement.Name);
            }
        }
    }

    [Fact]
    public void All_29_shared_cautions_ship_and_each_says_how_serious_it_is_and_where_it_stands()
    {
        var shared = Judged.Longreach.Ruleset.Cautions.Where(caution => caution.Info.Location.Path.EndsWith("shared/cautions.rules", StringComparison.Ordinal)).ToList();
        shared.Count.ShouldBe(29);
        shared.Count(caution => caution.Severity == CautionSeverity.Stop).ShouldBeGreaterThanOrEqualTo(3);
    }

    [Fact]
    public void The_parts_of_every_explanation_sum_to_its_score()
    {
        foreach (var ranking in Judged.Longreach.Rankings)
        {
            foreach (var placement in ranking.Placements)
            {
                var explained = Judged.Longreach.Explainer!.Explain(ranking, placement.Row.Movement)!;
                var awards = explained.Held<AwardDefinition>().Sum(rule => ((AwardDefinition)rule.Rule).Points);
                (explained.Criteria.Sum(criterion => criterion.Points) + awards).ShouldBe(placement.PrincipleScore, 1e-9);
                (placement.PrincipleScore + explained.Evidence!.ByStudies + explained.Evidence.PlacePoints).ShouldBe(placement.Score, 1e-9);
                explained.Reasons.Sum(reason => reason.Points).ShouldBe(placement.Gap, 1e-9);
            }
        }
    }

    [Fact]
    public void Every_rule_is_accounted_for_in_every_explanation()
    {
        var judgement = Judged.Longreach;
        var ruleset = judgement.Ruleset;
        var rules = ruleset.Awards.Length + ruleset.CancelOuts.Length + ruleset.Limits.Length + ruleset.Exclusions.Length + ruleset.Cautions.Length;
        var explained = judgement.Explain("hamstrings", "romanian deadlift");

        explained.Rules.Length.ShouldBe(rules);
        explained.Rules.Where(rule => rule.Effect == RuleEffect.DidNotHold).ShouldAllBe(rule => rule.Decisive != null);
        var leftOutRule = explained.Rules.Single(rule => rule.Rule.Info.Name == "load cannot grow");
        leftOutRule.Decisive!.Attribute!.Name.ShouldBe("loadability");
        leftOutRule.Decisive.Fact!.Value.Number.ShouldBe(4);
    }

    /// <summary>Three pairs, pinned by hand before the list of attributes and the constant were frozen; house judgement.</summary>
    [Theory]
    [InlineData("one-arm pressdown", "cable pressdown", 0.85, 1)]
    [InlineData("seated leg curl", "lying leg curl", 0.50, 0.85)]
    [InlineData("cable pressdown", "barbell back squat", 0, 0.20)]
    public void Likeness_of_three_pairs_lies_where_a_coach_would_put_it(string first, string second, double low, double high)
    {
        var judgement = Judged.Longreach;
        var likeness = new ScoreRules.Catalogue.Likeness(judgement.Ruleset.Attributes).Between(judgement.Movement(first), judgement.Movement(second));
        likeness.ShouldBeInRange(low, high);
    }
}
