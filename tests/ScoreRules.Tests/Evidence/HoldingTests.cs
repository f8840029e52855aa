using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;
using static ScoreRules.Tests.Evidence.StudyHouse;

namespace ScoreRules.Tests.Evidence;

/// <summary>Orders that are kept, cousins, the benchmark, and judgements by another movement.</summary>
public sealed class HoldingTests
{
    private static readonly (string, double, string, int)[] Pair = [("cable curl", 6, "rope", 0), ("bar curl", 5, "bar", 0)];

    [Fact]
    public void A_study_that_decides_keeps_the_lead_of_its_word()
    {
        var judgement = Judge(Scale + Study("One", "found bar curl is clearly better than cable curl", "let it decide"), Pair);
        var (better, worse) = (judgement.Moved("bar curl"), judgement.Moved("cable curl"));
        (better.Score - worse.Score).ShouldBe(10, 1e-9);
        (better.Score + worse.Score).ShouldBe(110, 1e-9);
        better.Held.Single().Points.ShouldBeGreaterThan(0);
        (better.Principle + better.ByStudies).ShouldBe(better.Score, 1e-9);
    }

    [Fact]
    public void A_measured_study_that_decides_keeps_the_order_alone()
    {
        var judgement = Judge(Scale + Study("One", "measured bar curl is 1 point give or take 4 points better than cable curl", "let it decide"), Pair);
        (judgement.Moved("bar curl").Score - judgement.Moved("cable curl").Score).ShouldBe(0, 1e-9);
    }

    [Fact]
    public void Orders_that_go_round_are_let_go_and_reported()
    {
        var judgement = Judge(Scale + Study("One", "found bar curl is clearly better than cable curl", "let it decide") + Study("Two", "found cable curl is clearly better than bar curl", "let it decide"), Pair);
        judgement.Findings.Select(finding => finding.Code).Where(code => code != "SR2011").ShouldBe(["SR6010"]);
        judgement.Moved("bar curl").Held.ShouldBeEmpty();
    }

    /// <summary>F2: the cousin of a tested movement moves with it, less than it; a movement of another kind stays.</summary>
    [Fact]
    public void Cousins_move_along_and_strangers_stay()
    {
        var judgement = Judge(Scale + "  spreads to movements at least 60% alike\n" + Study("One", "found bar curl is clearly better than cable curl"),
            [.. Pair, ("wide bar curl", 4, "bar", 6), ("ring curl", 3, "ring", 90)]);
        var (tested, cousin) = (judgement.Moved("bar curl").Moved, judgement.Moved("wide bar curl"));

        // Distance (0 + 6/180) / 2: kinship 0.99 exp(-6 / 60).
        cousin.Moved.ShouldBe(tested * 0.99 * Math.Exp(-0.1), 1e-9);
        cousin.IsTested.ShouldBeFalse();
        judgement.Moved("ring curl").Moved.ShouldBe(0);
    }

    [Fact]
    public void Without_a_likeness_only_the_tested_move() =>
        Judge(Scale + Study("One", "found bar curl is clearly better than cable curl"), [.. Pair, ("wide bar curl", 4, "bar", 6)]).Moved("wide bar curl").Moved.ShouldBe(0);

    /// <summary>F3: the benchmark moved, so every trail of the target says so.</summary>
    [Fact]
    public void A_benchmark_that_moved_is_told_in_every_trail()
    {
        var judgement = Judge(Scale + Study("One", "found bar curl is clearly better than cable curl"), [.. Pair, ("ring curl", 3, "ring", 90)]);
        foreach (var placement in judgement.Target("arm").Placements)
        {
            Flat(new ScoreRules.Publishing.ExplanationText(judgement).Print(judgement.Explain("arm", placement.Row.Movement.Name))).ShouldContain("The benchmark, cable curl, moved -8.9");
        }
    }

    /// <summary>The benchmark known: 20 short, all of it on the other side: 20 x 36 / (36 + 9).</summary>
    [Fact]
    public void A_frozen_benchmark_stays_and_the_other_side_moves_all_the_way()
    {
        var judgement = Judge(Scale + "  freezes benchmarks\n" + Study("One", "found bar curl is clearly better than cable curl"), Pair);
        judgement.Moved("cable curl").Moved.ShouldBe(0, 1e-3);
        judgement.Moved("bar curl").Moved.ShouldBe(16, 1e-3);
    }

    [Theory]
    [InlineData("just below", 59)]
    [InlineData("just above", 61)]
    [InlineData("beside", 55)]
    public void A_judgement_sets_a_movement_by_another(string where, double score)
    {
        var judgement = Judge($"place bar curl\n  {where} cable curl\n  because we say so\n", Pair);
        judgement.Moved("bar curl").Score.ShouldBe(score, 1e-9);
        judgement.Moved("bar curl").PlacePoints.ShouldBe(score - 50, 1e-9);
        judgement.Moved("cable curl").Score.ShouldBe(where == "beside" ? score : 60, 1e-9);
    }

    [Fact]
    public void An_untested_movement_follows_the_tested_one_it_is_placed_by()
    {
        var judgement = Judge(Scale + Study("One", "found bar curl is clearly better than cable curl") + "\nplace ring curl\n  just below bar curl\n  because we say so\n", [.. Pair, ("ring curl", 3, "ring", 90)]);
        judgement.Moved("ring curl").Score.ShouldBe(judgement.Moved("bar curl").Score - 1, 1e-9);
    }

    [Fact]
    public void A_movement_without_any_study_says_so() =>
        Flat(new ScoreRules.Publishing.ExplanationText(Judged.Longreach).Print(Judged.Longreach.Explain("chest", "dumbbell fly"))).ShouldContain("no study speaks of it or of a cousin");

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static Judgement Judge(string statements, params (string, double, string, int)[] movements)
    {
        var judgement = Judged.Text(StudyHouse.Text(statements, movements));
        judgement.Findings.Where(finding => finding.Severity == Severity.Error).Select(DiagnosticText.Short).ShouldBeEmpty();
        return judgement;
    }
}
