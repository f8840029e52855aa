using CsCheck;
using ScoreRules.Answers.Order;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class OrderTests
{
    [Theory]
    [InlineData("why long is above plain", "Above", "far +30", "", "firm -10")]
    [InlineData("why plain is above long", "Below", "far +30", "", "firm -10")]
    [InlineData("why both is above plain", "Above", "far +15", "both at once +10, firm +10", "")]
    [InlineData("why both is above long", "Above", "firm +20", "both at once +10", "far -15")]
    public void Reasons_are_what_a_pencil_finds(string question, string outcome, string enough, string more, string against)
    {
        var finding = Quayside.Ask<OrderAnswer>(question).Answer.Findings.Single();
        finding.Outcome.ToString().ShouldBe(outcome);
        Told(finding.Enough).ShouldBe(enough);
        Told(finding.More).ShouldBe(more);
        Told(finding.Against).ShouldBe(against);
        finding.Reasons.Sum(reason => reason.Points).ShouldBe(finding.Ahead, 1e-9);
    }

    [Fact]
    public void Where_tiers_decide_against_the_points_that_is_said()
    {
        var finding = Quayside.Ask<OrderAnswer>("why steady is above both", "place both\n  one tier lower\n\nplace steady\n  one tier higher\n").Answer.Findings.Single();
        finding.IsByTier.ShouldBeTrue();
        finding.Sufficient.ShouldBe(0);
        finding.Ahead.ShouldBe(-30, 1e-9);
    }

    [Fact]
    public void Movements_that_share_no_list_have_no_order() => Quayside.Ask<OrderAnswer>("why plain is above pusher").Answer.Findings.ShouldBeEmpty();

    [Fact]
    public void A_movement_that_is_left_out_has_no_order() =>
        Quayside.Ask<OrderAnswer>("why low is above plain", "leave out low\n  because nobody does it\n").Answer.Findings.Single().Outcome.ShouldBe(OrderOutcome.NoOrder);

    /// <summary>No smaller set of reasons is enough, and the one told is: by trying every set.</summary>
    [Fact]
    public void The_set_that_is_enough_is_the_smallest() =>
        Gen.Int[-9, 9].Array[1, 8].Sample(points =>
        {
            var reasons = points.Where(point => point != 0).OrderByDescending(Math.Abs).Select((point, at) => new OrderReason($"r{at}", point)).ToList();
            var (favour, against) = (reasons.Where(reason => reason.Points > 0).ToList(), -reasons.Where(reason => reason.Points < 0).Sum(reason => reason.Points));
            var sizes = Enumerable.Range(1, (1 << favour.Count) - 1).Where(set => favour.Where((_, at) => (set >> at & 1) == 1).Sum(reason => reason.Points) > against).Select(set => System.Numerics.BitOperations.PopCount((uint)set));
            return OrderReasons.Sufficient([.. reasons]) == sizes.DefaultIfEmpty(0).Min();
        });

    [Fact]
    public void In_a_shipped_house_all_reasons_add_up()
    {
        var house = Judged.Longreach;
        foreach (var ranking in house.Rankings)
        {
            var all = ranking.Placements.Select(placement => house.Explainer!.Explain(ranking, placement.Row.Movement)!).ToList();
            foreach (var (upper, lower) in all.Zip(all.Skip(1)))
            {
                OrderReasons.Of(upper, lower).Sum(reason => reason.Points).ShouldBe(upper.Placement!.Score - lower.Placement!.Score, 1e-9);
            }
        }
    }

    private static string Told(IEnumerable<OrderReason> reasons) => string.Join(", ", reasons.Select(reason => $"{reason.Name} {reason.Points:+0;-0}"));
}
