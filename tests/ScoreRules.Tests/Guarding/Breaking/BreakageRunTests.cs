using ScoreRules.Guarding.Breaking;
using ScoreRules.Publishing.Guards;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding.Breaking;

public sealed class BreakageRunTests
{
    // By hand: gaps are heavy +25, light -25, seated +36.25. Without "steady" (load alone counts) they are +50, -50, +30.
    // With "load" turned round they are -50, +50 and +5 (37.5 * (1 - 0.75) * 2 ... 18.75 + 25 + 5 against 50 = -1.25).
    [Theory]
    [InlineData("criterion \"steady\" taken out", BreakageEffect.NothingMoved)]
    [InlineData("criterion \"load\" turned round", BreakageEffect.Unnoticed)]
    [InlineData("give \"sits\" taken out", BreakageEffect.NothingMoved)]
    [InlineData("tier \"High\" moved up", BreakageEffect.Unnoticed)]
    public void Without_expectations_nothing_is_noticed(string title, BreakageEffect effect) => Effect(title, "").ShouldBe(effect);

    [Theory]
    [InlineData("criterion \"load\" turned round", "expect heavy raise is above light raise")]
    [InlineData("criterion \"load\" turned round", "expect light raise is in Low")]
    [InlineData("tier \"High\" moved up", "expect heavy raise is in High for calves")]
    public void An_expectation_that_fails_in_the_broken_house_notices(string title, string expectation) => Effect(title, expectation).ShouldBe(BreakageEffect.Noticed);

    [Theory]
    [InlineData("criterion \"load\" turned round", "expect plain raise is in Middle")]
    [InlineData("tier \"High\" moved up", "expect heavy raise is above light raise")]
    [InlineData("tier \"High\" moved up", "expect heavy raise is in Low")]
    public void One_that_still_holds_or_failed_already_does_not(string title, string expectation) => Effect(title, expectation).ShouldBe(BreakageEffect.Unnoticed);

    [Fact]
    public void A_target_that_can_no_longer_be_ranked_counts_neither_way()
    {
        var rules = CalfHouse.Rules.Replace("criterion steady\n  counts 10\n  reads steady\n  worth 0% at 0, 100% at 4\n", "", StringComparison.Ordinal);
        var report = new BreakageRun(CalfHouse.Judged(rules)).Run(cancellation: TestContext.Current.CancellationToken);
        report.Outcomes.Single(outcome => BreakageWords.Title(outcome.Breakage) == "criterion \"load\" taken out").Effect.ShouldBe(BreakageEffect.NotRanked);
    }

    [Fact]
    public void A_movement_that_is_no_longer_left_out_has_moved()
    {
        var judgement = CalfHouse.Judged(more: "leave out\n  named off\n  when load is 4\n");
        var outcome = new BreakageRun(judgement).Try(Breakages.Of(judgement.Ruleset).Single(one => BreakageWords.Title(one) == "leave out \"off\" taken out"));
        outcome.Moved.Single().Before.ShouldBeNull();
        BreakageWords.Move(outcome.Moved.Single()).ShouldBe("heavy raise in calves, from left out to High");
    }

    [Fact]
    public void Progress_runs_to_the_end_and_a_stop_is_obeyed()
    {
        var seen = new List<(int Done, int All)>();
        new BreakageRun(CalfHouse.Judged()).Run((done, all) => seen.Add((done, all)), TestContext.Current.CancellationToken);
        seen.ShouldBe(Enumerable.Range(1, 17).Select(done => (done, 17)));
        using var stop = new CancellationTokenSource();
        Should.Throw<OperationCanceledException>(() => new BreakageRun(CalfHouse.Judged()).Run((_, _) => stop.Cancel(), stop.Token));
    }

    private static BreakageEffect Effect(string title, string expectation)
    {
        var judgement = CalfHouse.Judged(more: expectation);
        judgement.HasErrors.ShouldBeFalse(string.Join('\n', judgement.Findings.Select(Language.Diagnostics.DiagnosticText.Full)));
        return new BreakageRun(judgement).Try(Breakages.Of(judgement.Ruleset).Single(breakage => BreakageWords.Title(breakage) == title)).Effect;
    }
}
