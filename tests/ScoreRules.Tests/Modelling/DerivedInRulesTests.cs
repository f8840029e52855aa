using ScoreRules.Catalogue;
using ScoreRules.Houses;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Modelling;

/// <summary>Rules read what mechanics derives, under plain names.</summary>
public sealed class DerivedInRulesTests
{
    private static readonly HouseSources Longreach = HouseFolder.Read(Repository.PathOf("rulesets", "longreach"));

    [Fact]
    public void The_names_rules_know_are_those_mechanics_gives_with_the_same_scales()
    {
        DerivedAttributes.All.Select(derived => derived.Name).ShouldBe(DerivedFacts.All.Select(fact => fact.Name));
        foreach (var (derived, fact) in DerivedAttributes.All.Zip(DerivedFacts.All))
        {
            derived.Unit.ShouldBe(fact switch { { Unit: "N m" } => "Nm", { Unit: "°" } => "°", { Low: 0, High: 1 } => "%", _ => "times" }, derived.Name);
        }
    }

    [Fact]
    public void A_criterion_reads_it_and_the_score_follows()
    {
        var judgement = Judged.House("longreach-second");
        var explained = judgement.Explain("elbow flexors", "preacher dumbbell curl");
        var tension = explained.Criteria.Single(criterion => criterion.Criterion.Name == "tension when lengthened");

        tension.Attribute.IsDerived.ShouldBeTrue();
        tension.Fact.Origin.ShouldBe(FactOrigin.Derived);
        var fact = judgement.Derived!.Of(explained.Row.Movement, explained.Row.Target, withIntervals: false).Find("loaded length in the long third")!;
        tension.Fact.Value.Number.ShouldBe(100 * fact.Value!.Value, 1e-9);
    }

    [Fact]
    public void A_machine_without_a_cam_has_no_load_facts_and_gets_the_worth_of_something_unknown()
    {
        var explained = Judged.House("longreach-second").Explain("hamstrings", "seated leg curl");

        explained.Criteria.Single(criterion => criterion.Criterion.Name == "tension when lengthened").IsUnknown.ShouldBeTrue();
        explained.Criteria.Single(criterion => criterion.Criterion.Name == "tension when lengthened").Worth.ShouldBe(0.4);
    }

    [Fact]
    public void An_even_load_that_the_house_accepts_gives_values_that_say_they_are_assumed()
    {
        var judgement = With("change ruleset Longreach\n  accepts an even load\n", "take 1 point\n  named long\n  when longest length under load is at least 80%\n");
        var attribute = judgement.Ruleset.Attributes.Single(attribute => attribute.Name == "longest length under load");
        var row = judgement.Target("hamstrings").Of(judgement.Movement("seated leg curl"))!.Row;

        judgement.Inferred!.Facts.Fact(row.Index, attribute).Origin.ShouldBe(FactOrigin.DerivedOnAssumption);
    }

    [Fact]
    public void An_even_load_may_be_accepted_for_one_movement_alone()
    {
        var judgement = With("", "change movement seated leg curl\n  accepts an even load\n\ntake 1 point\n  named long\n  when longest length under load is at least 80%\n");
        var attribute = judgement.Ruleset.Attributes.Single(attribute => attribute.Name == "longest length under load");
        FactOrigin Origin(string movement) => judgement.Inferred!.Facts.Fact(judgement.Target("hamstrings").Of(judgement.Movement(movement))!.Row.Index, attribute).Origin;

        Origin("seated leg curl").ShouldBe(FactOrigin.DerivedOnAssumption);
        Origin("lying leg curl").ShouldBe(FactOrigin.Derived);
    }

    [Fact]
    public void An_assumed_load_never_beats_a_computed_one()
    {
        var judgement = With("even load", "change criterion stretch\n  reads longest length under load\n  worth 0% at 0%, 100% at 100%\n  unknown is worth 10%\n");
        foreach (var ranking in judgement.Rankings)
        {
            var worths = ranking.Placements.Select(placement => judgement.Explain(ranking.Target.Name, placement.Row.Movement.Name).Criteria.Single(criterion => criterion.Criterion.Name == "stretch")).ToList();
            var computed = worths.Where(criterion => criterion.Fact.Origin == FactOrigin.Derived && !criterion.IsUnknown).Select(criterion => criterion.Worth).ToList();
            worths.Where(criterion => criterion.Fact.Origin == FactOrigin.DerivedOnAssumption).ShouldAllBe(criterion => computed.Count == 0 || criterion.Worth <= computed.Max());
        }
    }

    [Theory]
    [InlineData("take 3 points\n  named heavy on the back\n  when spine moment is more than 150 Nm\n", "barbell row", "cable pressdown")]
    [InlineData("take 3 points\n  named forces the forearm\n  when forced forearm rotation is more than 0°\n", "barbell curl", "dumbbell curl")]
    [InlineData("take 3 points\n  named far out\n  when longest length is at least 90%\n", "incline dumbbell curl", "cable pressdown")]
    public void A_condition_reads_it(string rule, string reached, string spared)
    {
        var judgement = With("", rule);
        var outcome = judgement.Inferred!.Outcome(judgement.Ruleset.Awards.Single(award => award.Info.Location.Path == "on-top/house.rules"));
        var rows = outcome.Effective.Select(row => judgement.Inferred.Facts.Rows[row].Movement.Name).ToHashSet();

        rows.ShouldContain(reached);
        rows.ShouldNotContain(spared);
    }

    [Fact]
    public void No_movement_may_state_what_mechanics_derives() =>
        With("", "change movement barbell curl\n  mean length is 40%\n").Findings.Select(finding => finding.Code).ShouldContain("SR7007");

    [Fact]
    public void A_house_that_reads_no_derived_fact_derives_none() =>
        Judge.Run(Longreach).Derived!.Derivations.ShouldBe(0);

    /// <summary>A difference in length below a fifth of the range says nothing, whatever the intervals.</summary>
    [Fact]
    public void Small_differences_of_length_give_no_order()
    {
        var judgement = Judged.House("longreach-second");
        foreach (var ranking in judgement.Rankings)
        {
            foreach (var placement in ranking.Placements.Where(placement => !placement.IsBenchmark))
            {
                var (one, other) = (Longest(judgement, placement.Row), Longest(judgement, ranking.Benchmark!));
                if (one is { } first && other is { } second && Math.Abs(first - second) < 0.2)
                {
                    judgement.Derived!.AreApart(placement.Row, ranking.Benchmark!, "longest length").ShouldBe(false, placement.Row.Movement.Name);
                }
            }
        }
    }

    private static double? Longest(Judgement judgement, PlacementRow row) => judgement.Derived!.Of(row.Movement, row.Target, withIntervals: true).Find("longest length")?.Value;

    private static Judgement With(string change, string rule)
    {
        var top = $"ruleset Quayside\n  version 1\n  builds on Longreach\n  checked 20 August 2031 by the tests\n{(change.Length > 0 ? "  accepts an even load\n" : "")}\n{rule}";
        return Judge.Run(Longreach with { Files = [.. Longreach.Files, new HouseFile("on-top/house.rules", top, "", IsSpreadsheet: false) { Layer = 2 }], Nearby = ["Longreach"] });
    }
}
