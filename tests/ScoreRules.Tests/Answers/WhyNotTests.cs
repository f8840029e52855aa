using ScoreRules.Answers.WhyNot;
using ScoreRules.Explanation;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class WhyNotTests
{
    [Fact]
    public void The_part_that_failed_is_told_with_what_was_found()
    {
        var finding = Quayside.Ask<WhyNotAnswer>("why not ready for long").Answer.Findings.Single();
        finding.Holds.ShouldBeFalse();
        var failed = finding.Ways.Single().Failed.Single();
        (failed.Condition.Location.Text, failed.Fact!.Value.Number).ShouldBe(("hold is at least 2", 1));
        finding.Found!.Singles.Select(found => (found.Changes[0].Attribute.Name, found.Changes[0].To.Number)).ShouldBe([("hold", 2)]);
    }

    [Fact]
    public void Two_parts_that_failed_need_two_changes()
    {
        var finding = Quayside.Ask<WhyNotAnswer>("why not both at once for low").Answer.Findings.Single();
        finding.Ways.Single().Effect.ShouldBe(RuleEffect.DidNotHold);
        finding.Found!.Singles.ShouldBeEmpty();
        finding.Found.Pairs.Single().Changes.Select(change => (change.Attribute.Name, change.To.Number)).ShouldBe([("reach", 3), ("hold", 2)]);
    }

    [Fact]
    public void What_does_hold_is_said_to_hold() => Quayside.Ask<WhyNotAnswer>("why not slippery for long").Answer.Findings.Single().Holds.ShouldBeTrue();

    [Fact]
    public void An_excepted_movement_cannot_be_changed_into_it()
    {
        var finding = Quayside.Ask<WhyNotAnswer>("why not dull for low", "take 3 points\n  named dull\n  when reach is 0\n  except for low because it is a demonstration\n").Answer.Findings.Single();
        finding.Ways.Single().Effect.ShouldBe(RuleEffect.Exempt);
        finding.Found!.All.ShouldBeEmpty();
    }

    [Fact]
    public void What_is_not_recorded_is_told_so()
    {
        var finding = Quayside.Ask<WhyNotAnswer>("why not ready for vague", "movement vague\n  trains arms\n  reach is 4, hold is 1, handle is straight, elbow stress is 0\n  equipment has nothing\n\nattribute depth\n  rated 0 to 4\n\ncall deep\n  when depth is 4\n\nask why not deep for vague\n").Answer.Findings.Single();
        finding.Ways.Single().Effect.ShouldBe(RuleEffect.DidNotHold);
    }
}
