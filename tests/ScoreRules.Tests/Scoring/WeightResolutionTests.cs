using ScoreRules.Houses;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Scoring;

/// <summary>Weights told by order or by comparison, in a whole house.</summary>
public sealed class WeightResolutionTests
{
    private const double Exact = 1e-9;
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

    private static double[] Weights(string rules)
    {
        var judgement = Judge.Run(new HouseSources([new HouseFile("house.rules", rules, "", IsSpreadsheet: false), new HouseFile("shared/prelude.rules", Prelude, "", IsSpreadsheet: false)], []));
        judgement.Findings.ShouldBeEmpty();
        return [.. Names.Select(name => judgement.Ruleset.Criteria.Single(criterion => criterion.Name == name).Weights.Single().Amount!.Number)];
    }

    private static string Three(params string[] counts) => string.Concat(
        Names.Zip(counts, (name, count) => $"criterion {name}\n  counts {count}\n  reads set-up\n  worth 100% at 10 s, 0% at 60 s\n\n"));
}
