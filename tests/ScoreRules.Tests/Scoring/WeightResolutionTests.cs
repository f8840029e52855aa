using ScoreRules.Houses;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Scoring;

/// <summary>Weights told by order or by comparison, in a whole house.</summary>
public sealed class WeightResolutionTests
{
    private const double Exact = 1e-9;
    private const string Calves = "\n\ntarget calves\n  made of vastus lateralis 1 part\n  benchmark calf press\n\nmovement calf press\n  trains calves\n  set-up is 20 s, long tension is 3\n  grip is neutral\n  equipment has barbell\n";
    private static readonly string[] Names = ["one", "two", "three"];
    private static readonly string Prelude = Repository.Read("tests", "ScoreRules.Tests", "Documentation", "prelude.rules").ReplaceLineEndings("\n").Replace("criterion tension\n  counts 10\n  reads long tension\n  worth 0% at 0, 100% at 4\n  unknown is worth 40%\n", "", StringComparison.Ordinal);

    // Rank-order centroid of three (Barron and Barrett 1996): 11/18, 5/18, 2/18.
    [Fact]
    public void An_order_gives_the_centroid_of_a_hundred() =>
        Weights(Three("by weights", "by weights", "by weights") + "weights\n  order one, two, three\n").ShouldBe([1100.0 / 18, 500.0 / 18, 200.0 / 18], Exact);

    [Fact]
    public void A_number_sets_the_scale_of_an_order() =>
        Weights(Three("22", "by weights", "by weights") + "weights\n  order one, two, three\n").ShouldBe([22, 10, 4], Exact);

    [Fact]
    public void Comparisons_that_agree_are_met() =>
        Weights(Three("by weights", "by weights", "by weights") + "weights\n  one is 3 times as important as two\n  two is 2 times as important as three\n").ShouldBe([600.0 / 9, 200.0 / 9, 100.0 / 9], Exact);

    [Fact]
    public void A_word_of_the_house_and_a_number_join_hands() =>
        Weights(Three("by weights", "12", "by weights") + "say a little means 1.5 times as important\nweights\n  one is a little more important than two\n  two is 2 times as important as three\n").ShouldBe([18, 12, 6], Exact);

    // The narrower order of two: 3/4 and 1/4 (Barron and Barrett 1996) for the target it names, the wider one for all others.
    [Fact]
    public void An_order_for_some_targets_stands_in_for_the_one_for_all() =>
        ByTarget(Two("by weights", "by weights") + "weights\n  order one, two\nweights\n  order two, one\n  only for calves\n")
            .ShouldBe(["elbow flexors 75 25", "calves 25 75"]);

    [Fact]
    public void Weights_except_for_a_target_leave_it_to_the_others() =>
        ByTarget(Two("by weights", "by weights") + "weights\n  order one, two\n  except for calves\nweights\n  one is 1 times as important as two\n  only for calves\n")
            .ShouldBe(["elbow flexors 75 25", "calves 50 50"]);

    // 8 for one target and 2 for all others set the scale of each list: three times as important is 24 there and 6 here.
    [Fact]
    public void A_number_sets_the_scale_of_the_target_it_is_for() =>
        ByTarget("criterion one\n  counts 2\n  counts 8 for calves\n  reads set-up\n  worth 100% at 10 s, 0% at 60 s\n\n" + Two("by weights", "").Split("\n\n")[0].Replace("one", "two", StringComparison.Ordinal) + "\n\nweights\n  two is 3 times as important as one\n")
            .ShouldBe(["elbow flexors 2 6", "calves 8 24"]);

    [Fact]
    public void A_target_without_weights_is_named() =>
        Judged(Two("by weights", "by weights") + "weights\n  order one, two\n  only for calves\n").Findings.Select(finding => finding.Headline)
            .ShouldBe(["Criterion \"one\" counts by weights, and no weights for \"elbow flexors\" name it"]);

    [Fact]
    public void Two_statements_for_one_target_are_one_too_many() =>
        Judged(Two("by weights", "by weights") + "weights\n  order one, two\n  only for calves\nweights\n  order two, one\n  only for calves, elbow flexors\n").Findings.Select(finding => finding.Code).Distinct().ShouldBe(["SR5018"]);

    // Scale from the numbers 10 (first, 11/18) and 9 (last, 2/18): the geometric mean of 16.36 and 81 is 36.4, so the middle one would count 10.1.
    [Fact]
    public void An_order_between_two_numbers_that_come_out_reversed_is_told() =>
        Judged(Three("10", "by weights", "9") + "weights\n  order one, two, three\n").Findings.Select(finding => finding.Headline)
            .ShouldBe(["\"one\" stands before \"two\" in the order and counts less: 10 against 10.1"]);

    private static string[] ByTarget(string rules)
    {
        var judgement = Judged(rules);
        judgement.Findings.ShouldBeEmpty();
        var criteria = judgement.Ruleset.Criteria;
        return [.. judgement.Ruleset.Targets.Select(target => $"{target.Name} {string.Join(' ', criteria.OrderBy(criterion => criterion.Name, StringComparer.Ordinal).Select(criterion => Plain(target.Name, criterion)))}")];
    }

    private static string Plain(string target, Language.Binding.CriterionDefinition criterion) =>
        Math.Round((criterion.Weights.FirstOrDefault(line => line.Targets.Any(named => named.Name == target)) ?? criterion.Weights.First(line => line.Targets.IsEmpty)).Amount!.Number, 6)
            .ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Two(string one, string two) => string.Concat(Three(one, two, "").Split("\n\n")[..2].Select(text => text + "\n\n"));

    private static Judgement Judged(string rules) =>
        Judge.Run(new HouseSources([new HouseFile("house.rules", rules, "", IsSpreadsheet: false), new HouseFile("shared/prelude.rules", Prelude + Calves, "", IsSpreadsheet: false)], []));

    private static double[] Weights(string rules)
    {
        var judgement = Judge.Run(new HouseSources([new HouseFile("house.rules", rules, "", IsSpreadsheet: false), new HouseFile("shared/prelude.rules", Prelude, "", IsSpreadsheet: false)], []));
        judgement.Findings.ShouldBeEmpty();
        return [.. Names.Select(name => judgement.Ruleset.Criteria.Single(criterion => criterion.Name == name).Weights.Single().Amount!.Number)];
    }

    private static string Three(params string[] counts) => string.Concat(
        Names.Zip(counts, (name, count) => $"criterion {name}\n  counts {count}\n  reads set-up\n  worth 100% at 10 s, 0% at 60 s\n\n"));
}
