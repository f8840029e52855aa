using ScoreRules.Answers.Gaps;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class GapTests
{
    [Fact]
    public void Movements_one_fact_away_are_judged_as_if_they_were_there()
    {
        var list = Quayside.Ask<GapAnswer>("what is forgotten for arms").Answer.Lists.Single();
        list.Best.Select(Told).ShouldBe(["both free Keep 85", "long straight Keep 70", "steady free Good 55", "plain free Level 50", "low free Level 0"]);
        (list.More, list.Refused).ShouldBe((0, 0));
    }

    [Fact]
    public void What_cannot_be_is_left_aside()
    {
        var list = Quayside.Ask<GapAnswer>("what is forgotten for arms", "refuse\n  named no free bench\n  when handle is free and equipment has bench\n  because the bench holds the bar\n").Answer.Lists.Single();
        list.Best.Select(Told).ShouldBe(["long straight Keep 70", "plain free Level 50", "low free Level 0"]);
        list.Refused.ShouldBe(2);
    }

    /// <summary>Writing the movement into the house gives the score that was predicted.</summary>
    [Fact]
    public void The_score_is_that_of_the_movement_written_into_the_house()
    {
        var house = Judged.Text(Quayside.Text([.. Quayside.Movements, Quayside.Movements[1] with { Name = "new", Handle = "straight" }]));
        var written = house.Target("arms").Of(house.Movement("new"))!;
        var told = Quayside.Ask<GapAnswer>("what is forgotten for arms").Answer.Lists.Single().Best[1].Supposed.Placement!;
        (told.Score, told.Tier.Name).ShouldBe((written.Score, written.Tier.Name));
    }

    [Fact]
    public void What_is_said_of_a_movement_by_name_does_not_hold_for_one_that_is_like_it() =>
        Quayside.Ask<GapAnswer>("what is forgotten for arms", "place both\n  one tier lower\n").Answer.Lists.Single().Best.Select(Told).First().ShouldBe("both free Keep 85");

    private static string Told(GapFinding gap) =>
        $"{gap.Like.Movement.Name} {gap.Supposed.Changes[0].Attribute.Values[gap.Supposed.Changes[0].To.Codes[0]]} {gap.Supposed.Placement!.Tier.Name} {gap.Supposed.Placement.Score:0.###}";
}
