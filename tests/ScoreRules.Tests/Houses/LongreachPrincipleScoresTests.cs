using System.Globalization;
using ScoreRules.Inference;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>
/// The Longreach house against scores computed by an independent program from the same draft ratings, before evidence
/// (source column of the reference file). Tolerance 0.005 points: the reference is rounded to two decimals.
/// </summary>
public sealed class LongreachPrincipleScoresTests
{
    public static TheoryData<string, string, string, string, string> Pins()
    {
        var pins = new TheoryData<string, string, string, string, string>();
        foreach (var row in ReferenceTable.Rows("longreach-principle-scores.csv"))
        {
            pins.Add(row["target"], row["movement"], row["principleScore"], row["calledFacts"], row["caps"]);
        }

        return pins;
    }

    [Theory]
    [MemberData(nameof(Pins))]
    public void Score_called_facts_and_caps_equal_the_independent_computation(string target, string movement, string score, string calledFacts, string caps)
    {
        var explained = Judged.Longreach.Explain(target, movement);

        explained.PrincipleScore.ShouldBe(double.Parse(score, CultureInfo.InvariantCulture), 0.005);

        string[] pinnedFacts = ["long-loaded", "stays on target", "complete stimulus", "gives out elsewhere"];
        var called = explained.CalledFacts.Where(fact => fact.Verdict == Verdict.Held && pinnedFacts.Contains(fact.Name)).Select(fact => fact.Name);
        called.Order().ShouldBe(Split(calledFacts).Order());

        var applying = explained.Placement!.Limits.Where(limit => limit.IsCap).Select(limit => $"{limit.Tier.Name}: {limit.Info.Name}");
        applying.Order().ShouldBe(Split(caps).Order());
    }

    [Fact]
    public void All_52_rows_of_the_reference_are_checked() => ReferenceTable.Rows("longreach-principle-scores.csv").Count.ShouldBe(52);

    private static string[] Split(string list) => list.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
