using CsCheck;
using ScoreRules.Answers;
using ScoreRules.Answers.Audit;
using ScoreRules.Catalogue;
using ScoreRules.Houses;
using ScoreRules.Language;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class AuditTests
{
    private const string Barred = """
        attribute load
          in kg

        never above Level
          named barred
          when load is at least 100 kg
          because it is too heavy

        movement heavy
          trains arms
          reach is 3, hold is 3, handle is straight, elbow stress is 0, load is 100 kg
          equipment has nothing

        movement mild
          trains arms
          reach is 3, hold is 2, handle is straight, elbow stress is 0
          equipment has nothing

        """;

    [Fact]
    public void A_movement_below_one_that_is_nowhere_better_is_found_with_the_rule_that_did_it()
    {
        var finding = Quayside.Ask<AuditAnswer>("what is misplaced for arms", Barred).Answer.Findings.Single();
        finding.Dominance.Select(pair => $"{pair.Better.Row.Movement.Name} under {pair.Above.Row.Movement.Name} by {pair.Cause?.Info.Name}").ShouldBe(["heavy under mild by barred", "heavy under both by barred"], ignoreOrder: true);
    }

    [Fact]
    public void Without_limits_nothing_is_below_what_is_nowhere_better() => Quayside.Ask<AuditAnswer>("what is misplaced").Answer.Findings.ShouldAllBe(finding => finding.Dominance.IsEmpty);

    [Fact]
    public void A_failed_expectation_is_told() =>
        Quayside.Ask<AuditAnswer>("what is misplaced", "expect plain is above both\n").Answer.Failed.Length.ShouldBe(1);

    /// <summary>By looking at the facts of random movements alone.</summary>
    [Fact]
    public void Dominance_is_what_looking_at_all_pairs_finds() =>
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Bool).Array[2, 6].Sample(drawn =>
        {
            var movements = drawn.Select((one, at) => new QuaysideMovement($"m{at}", one.Item1, one.Item2, one.Item3 ? "free" : "straight", "nothing", 0)).ToList();
            var (answer, judgement) = Quayside.AskIn<AuditAnswer>(Quayside.Text([Quayside.Movements[0], .. movements]), "what is misplaced for arms");
            var ranking = judgement.Target("arms");
            var expected = from better in movements.Append(Quayside.Movements[0])
                           from above in movements.Append(Quayside.Movements[0])
                           where better.Reach >= above.Reach && better.Hold >= above.Hold && Rank(better) > Rank(above)
                           select $"{better.Name} {above.Name}";
            answer.Findings.Single().Dominance.Select(pair => $"{pair.Better.Row.Movement.Name} {pair.Above.Row.Movement.Name}").ShouldBe(expected, ignoreOrder: true);

            int Rank(QuaysideMovement movement) => ranking.Of(judgement.Movement(movement.Name))!.Rank;
        }, iter: 25, threads: 1);

    [Fact]
    public void In_Longreach_the_judgement_that_holds_a_movement_down_is_named()
    {
        var house = Judge.Run(HouseFolder.Read(Repository.PathOf("rulesets", "longreach")).WithQuestion("what is misplaced for quadriceps"));
        var answer = (AuditAnswer)Answerer.Answer(house, house.Ruleset.Questions.Single(one => one.Kind == QuestionKind.WhatIsMisplaced), house.Rankings);
        var pair = answer.Findings.Single().Dominance.First(pair => pair.Better.Row.Movement.Name == "hack squat");
        pair.Cause!.Info.Kind.ShouldBe("place");
    }

    /// <summary>Three alike and one unlike: the mean is weighted by likeness, exp(-6 x mean distance).</summary>
    [Fact]
    public void What_cousins_suggest_is_weighted_by_likeness()
    {
        var house = Quayside.House();
        var likeness = new Likeness(house.Ruleset.Attributes);
        var list = house.Target("arms").Placements;
        var plain = list.Single(placement => placement.Row.Movement.Name == "plain");
        var (both, steady, low, far) = (Math.Exp(-6 * 0.125), Math.Exp(-6 * 0.125), Math.Exp(-6 * 0.25), Math.Exp(-6 * 0.75));
        Residuals.Suggested(plain, list, likeness).ShouldBe(((both * 85) + (steady * 55) + (low * 0) + (far * 70)) / (both + steady + low + far), 1e-9);
    }
}
