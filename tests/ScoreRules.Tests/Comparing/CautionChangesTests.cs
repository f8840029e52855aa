using ScoreRules.Comparing;
using ScoreRules.Language.Binding;
using ScoreRules.Tests.Guarding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Comparing;

public sealed class CautionChangesTests
{
    private const string Calm = "caution Go slowly.\n  named calm\n  when load is at least 3\n  severity high\n  shown on the card\n";

    [Fact]
    public void A_caution_that_only_the_old_house_has_is_lost_and_stands_first()
    {
        var changes = Compare(Calm, "caution Another.\n  named other\n  always\n  severity low\n  shown at the foot\n");
        changes.Select(change => (change.Text, change.IsLoss)).ShouldBe([("Go slowly.", true), ("Another.", false)]);
        changes[0].New.ShouldBeNull();
        changes[1].Old.ShouldBeNull();
    }

    [Fact]
    public void One_that_reaches_fewer_movements_is_weaker_and_names_them()
    {
        var change = Compare(Calm, Calm.Replace("at least 3", "at least 4", StringComparison.Ordinal)).Single();
        change.IsLoss.ShouldBeTrue();
        change.NoLonger.ShouldBe(["seated raise"]);
        change.Newly.ShouldBeEmpty();
    }

    [Fact]
    public void One_that_reaches_more_movements_is_no_loss()
    {
        var change = Compare(Calm, Calm.Replace("at least 3", "at least 2", StringComparison.Ordinal)).Single();
        change.IsLoss.ShouldBeFalse();
        change.Newly.ShouldBe(["plain raise"]);
    }

    [Fact]
    public void One_that_is_less_serious_now_is_a_loss()
    {
        var change = Compare(Calm, Calm.Replace("high", "low", StringComparison.Ordinal)).Single();
        (change.Old!.Severity, change.New!.Severity, change.IsLoss).ShouldBe((CautionSeverity.High, CautionSeverity.Low, true));
    }

    [Fact]
    public void Another_condition_that_reaches_the_same_movements_is_no_change() =>
        Compare(Calm, Calm.Replace("load is at least 3", "load is more than 2", StringComparison.Ordinal)).ShouldBeEmpty();

    private static CautionChange[] Compare(string old, string now) => [.. HouseComparer.Compare(CalfHouse.Judged(more: old), CalfHouse.Judged(more: now)).Cautions];
}
