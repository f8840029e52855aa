using ScoreRules.Answers.Kit;
using ScoreRules.Tiering;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class KitTests
{
    [Fact]
    public void What_is_lost_is_the_first_three_before_and_after()
    {
        var finding = Quayside.Ask<LossAnswer>("what is lost without cable").Answer.Findings.Single(finding => finding.Target.Name == "arms");
        Names(finding.Before).ShouldBe(["both", "long", "steady"]);
        Names(finding.After).ShouldBe(["steady", "plain", "low"]);
        Names(finding.Gone).ShouldBe(["both", "long"]);
        finding.Loss.ShouldBe(30, 1e-9);
    }

    [Fact]
    public void A_profile_loses_only_what_it_has()
    {
        var finding = Quayside.Ask<LossAnswer>("what is lost without cable", profile: "home").Answer.Findings.Single(finding => finding.Target.Name == "arms");
        finding.ShowsAtTheTop.ShouldBeFalse();
        Names(finding.Before).ShouldBe(["plain", "low"]);
    }

    [Fact]
    public void The_next_purchase_and_the_best_two_are_exact()
    {
        var answer = Quayside.Ask<PurchaseAnswer>("what to buy\n  using profile home").Answer;
        answer.Singles.Select(purchase => (purchase.Kit[0], purchase.Points)).ShouldBe([("cable", 20), ("bench", 5)]);
        (string.Join(" ", answer.Second!.Kit), answer.Second.Points).ShouldBe(("cable bench", 35));
        answer.Pair!.Kit.ShouldBe(["bench", "cable"]);
        answer.Pair.Points.ShouldBe(35, 1e-9);
    }

    [Fact]
    public void The_best_two_may_hold_neither_of_the_best_pieces()
    {
        var movements = new[] { new QuaysideMovement("plain", 2, 2, "straight", "bar", 0), new QuaysideMovement("one", 3, 2, "straight", "bench", 0), new QuaysideMovement("two", 4, 4, "straight", "cable", 0) };
        var house = Quayside.Text(movements).Replace("some of bar, bench, cable", "some of bar, bench, cable, rope", StringComparison.Ordinal)
            .Replace("equipment has cable", "equipment has cable, rope", StringComparison.Ordinal);
        var answer = Quayside.AskIn<PurchaseAnswer>(house, "what to buy for arms\n  using profile home").Answer;
        answer.Singles.Select(purchase => purchase.Kit[0]).ShouldBe(["bench"]);
        answer.Pair!.Kit.ShouldBe(["cable", "rope"]);
    }

    [Fact]
    public void Without_a_profile_there_is_no_answer_but_the_profiles_there_are()
    {
        var answer = Quayside.Ask<PurchaseAnswer>("what to buy").Answer;
        (answer.Profile, answer.Profiles.Single()).ShouldBe((null, "home"));
    }

    private static IEnumerable<string> Names(IEnumerable<Placement> placements) => placements.Select(placement => placement.Row.Movement.Name);
}
