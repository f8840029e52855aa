using CsCheck;
using ScoreRules.Answers;
using ScoreRules.Answers.Change;
using ScoreRules.Answers.Lift;
using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

/// <summary>What lifts a movement: told changes are made in the text of the house, which is judged from the beginning.</summary>
public sealed class LiftTests
{
    [Fact]
    public void A_cap_is_told_first_and_then_what_takes_it_away()
    {
        var finding = Quayside.Ask<LiftAnswer>("what lifts long").Answer.Findings.Single();
        finding.Wanted!.Name.ShouldBe("Keep");
        finding.Need.ShouldBe(0);
        finding.Obstacles.Single().Info.Name.ShouldBe("slippery");
        Told(finding.Found!.Singles).ShouldBe(["hold 2 -> Keep 90", "handle free > straight -> Keep 70"], ignoreOrder: true);
        finding.Found.Pairs.ShouldBeEmpty();
        finding.Found.Singles.Single(found => found.Changes[0].Attribute.Name == "handle").GymCanChange.ShouldBeTrue();
        finding.Found.Singles.Single(found => found.Changes[0].Attribute.Name == "hold").GymCanChange.ShouldBeFalse();
    }

    [Fact]
    public void The_smallest_single_change_and_the_smallest_pair_are_told()
    {
        var finding = Quayside.Ask<LiftAnswer>("what lifts low to Good").Answer.Findings.Single();
        finding.Need.ShouldBe(55);
        Told(finding.Found!.Singles).ShouldBe(["reach 4 -> Good 60"]);
        Told(finding.Found.Pairs).ShouldBe(["reach 3, hold 1 -> Good 55"]);
    }

    [Fact]
    public void The_benchmark_cannot_be_lifted_above_itself()
    {
        var finding = Quayside.Ask<LiftAnswer>("what lifts plain to Keep").Answer.Findings.Single();
        (finding.IsBenchmark, finding.Found).ShouldBe((true, null));
    }

    [Fact]
    public void What_is_left_out_is_let_in_by_a_change()
    {
        var finding = Quayside.Ask<LiftAnswer>("what lifts steady to Good", "leave out\n  named too tight\n  when hold is 4 and reach is at most 1\n  because it is too tight\n").Answer.Findings.Single();
        finding.Obstacles.Single().Info.Name.ShouldBe("too tight");
        Told(finding.Found!.Singles).ShouldBe(["reach 2 -> Keep 70"]);
    }

    [Fact]
    public void A_movement_in_the_tier_already_needs_nothing() => Quayside.Ask<LiftAnswer>("what lifts both to Good").Answer.Findings.Single().IsThere.ShouldBeTrue();

    [Fact]
    public void What_cannot_be_is_counted_and_not_told()
    {
        var finding = Quayside.Ask<LiftAnswer>("what lifts low to Good", "refuse\n  named cannot be\n  when reach is 4 and hold is 0\n  because nothing holds it there\n").Answer.Findings.Single();
        finding.Found!.Singles.ShouldBeEmpty();
        finding.Found.Refused.ShouldBeGreaterThan(0);
    }

    /// <summary>Numbers are found on lines between the bends: 6 points a kg from 0 to 10 kg, 55 points needed, reach gives none.</summary>
    [Fact]
    public void A_number_is_found_between_the_bends()
    {
        const string more = "attribute load\n  in kg\n\ncriterion heavy\n  counts 100 parts\n  reads load\n  worth 0% at 0 kg, 100% at 10 kg\n  unknown is worth 0%\n\nmovement iron\n  trains arms\n  reach is 0, hold is 0, handle is straight, elbow stress is 0, load is 1 kg\n  equipment has nothing\n";
        var finding = Quayside.Ask<LiftAnswer>("what lifts iron to Good", more).Answer.Findings.Single();
        // plain has 25 points now (half of 50); 30 are needed, 5 for each kg: 6 kg.
        finding.Found!.Singles.Select(found => found.Changes[0]).Single(change => change.Attribute.Name == "load").To.Number.ShouldBe(6, 1e-9);
    }

    /// <summary>For random movements: what is told is what trying every single change in the text finds.</summary>
    [Fact]
    public void Single_changes_are_those_that_trying_them_all_finds() =>
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Bool).Sample((reach, hold, free) =>
        {
            var odd = new QuaysideMovement("odd", reach, hold, free ? "free" : "straight", "nothing", 0);
            var house = Quayside.Text([.. Quayside.Movements, odd]);
            var finding = Quayside.AskIn<LiftAnswer>(house, "what lifts odd to Keep").Answer.Findings.Single();
            var tried = Ratings("reach", reach).Concat(Ratings("hold", hold)).Append(("handle", 0, free ? "straight" : "free"))
                .Where(change => Tier(Quayside.Text([.. Quayside.Movements, odd.With(change.Attribute, change.Number, change.Word)]), "odd") == "Keep").ToList();
            var smallest = tried.Where(change => tried.TrueForAll(other => other.Attribute != change.Attribute || Size(change, reach, hold) <= Size(other, reach, hold)));
            var told = finding.IsThere ? [] : finding.Found!.Singles.Select(found => $"{found.Changes[0].Attribute.Name} {Value(found.Changes[0])}");
            told.ShouldBe(finding.IsThere ? [] : smallest.Select(change => $"{change.Attribute} {change.Word ?? $"{change.Number}"}"), ignoreOrder: true);
        }, iter: 25, threads: 1);

    /// <summary>In a shipped house: each change is supposed once more by itself, and the tier is seen.</summary>
    [Theory]
    [InlineData("dumbbell kickback", "elbow extensors", "Level with the benchmark")]
    [InlineData("lying leg curl", "hamstrings", "Level with the benchmark")]
    [InlineData("standing cable fly", "chest", "Build on it")]
    [InlineData("nordic curl", "hamstrings", "Build on it")]
    public void What_is_told_is_seen_again(string name, string target, string tier)
    {
        var house = Judged.Longreach;
        var (movement, ranking, rules) = (house.Movement(name), house.Target(target), house.Ruleset);
        var wanted = rules.Tiers.Single(one => one.Name == tier);
        var question = new QuestionDefinition(new StatementInfo("ask what lifts", null, movement.Location), QuestionKind.WhatLifts) { Movements = [name], Tier = wanted, Targets = [ranking.Target] };
        var finding = ((LiftAnswer)Answerer.Answer(house, question, house.Rankings)).Findings.Single();
        foreach (var found in finding.Found?.All ?? [])
        {
            var catalogue = found.Changes.Aggregate(house.Catalogue, (made, change) => Supposition.Suppose(made, made.Find(name)!, change.Attribute, change.To));
            var again = Judge.Again(house, rules, catalogue).Target(target).Of(catalogue.Find(name)!)!;
            (again.Tier.Name, again.Score).ShouldBe((found.Placement!.Tier.Name, found.Placement.Score));
            again.Tier.Index.ShouldBeLessThanOrEqualTo(wanted.Index);
        }
    }

    private static IEnumerable<(string Attribute, double Number, string? Word)> Ratings(string attribute, int now) =>
        Enumerable.Range(0, 5).Where(step => step != now).Select(step => (attribute, (double)step, (string?)null));

    private static double Size((string Attribute, double Number, string? Word) change, int reach, int hold) =>
        change.Attribute == "reach" ? Math.Abs(change.Number - reach) : change.Attribute == "hold" ? Math.Abs(change.Number - hold) : 1;

    private static string? Tier(string house, string movement)
    {
        var judgement = Judged.Text(house);
        return judgement.Target("arms").Of(judgement.Movement(movement))?.Tier.Name;
    }

    private static string Value(FactChange change) => change.To.Codes.IsEmpty ? $"{change.To.Number}" : change.Attribute.Values[change.To.Codes[0]];

    private static IEnumerable<string> Told(IEnumerable<Supposed> sets) => sets.Select(set =>
        $"{string.Join(", ", set.Changes.Select(change => change.To.Codes.IsEmpty ? $"{change.Attribute.Name} {Value(change)}" : $"{change.Attribute.Name} {change.Attribute.Values[change.From.Value.Codes[0]]} > {Value(change)}"))} -> {set.Placement!.Tier.Name} {set.Placement.Score:0.###}");
}
