using CsCheck;
using ScoreRules.Comparing;
using ScoreRules.Tests.Guarding;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Comparing;

public sealed class HouseComparerTests
{
    [Fact]
    public void A_house_compared_with_its_copy_differs_in_nothing()
    {
        var comparison = HouseComparer.Compare(Judged.Longreach, Judge.Run(Judged.Longreach.Sources));
        comparison.IsEmpty.ShouldBeTrue();
        comparison.Changes.ShouldBeEmpty();
        comparison.Targets.ShouldAllBe(target => target.TauB == 1 && Math.Abs(target.Top!.Extrapolated - 1) < 1e-12);
    }

    // By hand: from 30 and 10 to 30 and 30 the scores are plain 50, heavy 50, light 50, seated 87.5 + 5.
    [Fact]
    public void One_changed_weight_is_the_whole_of_every_move()
    {
        var comparison = Compare(CalfHouse.Rules.Replace("counts 10", "counts 30", StringComparison.Ordinal));
        var change = comparison.Changes.Single();
        (change.Block, change.Title).ShouldBe((RuleBlock.Criteria, "criterion \"steady\""));
        var moves = comparison.Targets.Single().Changes;
        moves.Select(move => (move.Movement, move.Kind)).ShouldBe(
            [("seated raise", PlacementChangeKind.SameTier), ("heavy raise", PlacementChangeKind.OtherTier), ("light raise", PlacementChangeKind.OtherTier), ("plain raise", PlacementChangeKind.SameTier)], ignoreOrder: true);
        var heavy = moves.Single(move => move.Movement == "heavy raise");
        heavy.Parts.Single().Gap.ShouldBe(-25, 1e-9);
        heavy.Parts.Single().Tier.ShouldBe(1, 1e-9);
        heavy.Parts.Single().Lines.ShouldBe([change]);
    }

    // Seated: gap 36.25. With "counts 30" it is 42.5 (37.5 + 5); with 15 points for sitting 46.25; with both 52.5: +6.25 and +10, whatever the order.
    [Fact]
    public void Changes_in_two_blocks_are_told_apart()
    {
        var rules = CalfHouse.Rules.Replace("counts 10", "counts 30", StringComparison.Ordinal).Replace("give 5", "give 15", StringComparison.Ordinal);
        var seated = Compare(rules).Targets.Single().Changes.Single(move => move.Movement == "seated raise");
        seated.Parts.Select(part => part.Block).ShouldBe([RuleBlock.Awards, RuleBlock.Criteria]);
        seated.Parts[0].Gap.ShouldBe(10, 1e-9);
        seated.Parts[1].Gap.ShouldBe(6.25, 1e-9);
    }

    [Theory]
    [InlineData("call c\n  when load is 4\n\nnever above Low\n  when c", RuleBlock.Limits, RuleBlock.CalledFacts)]
    [InlineData("leave out\n  named off\n  when load is 4", RuleBlock.Exclusions)]
    [InlineData("evidence\n  principles may be off by 6 points\n  a lone study adds 3 points of doubt", RuleBlock.Evidence)]
    [InlineData("place heavy raise\n  one tier lower\n  because so", RuleBlock.Judgements)]
    public void Other_blocks_are_found(string more, params RuleBlock[] blocks) =>
        Compare(CalfHouse.Rules, more).Blocks.Order().ShouldBe(blocks.Order());

    [Fact]
    public void A_changed_fact_names_the_movement_and_the_fact()
    {
        var comparison = HouseComparer.Compare(CalfHouse.Judged(), CalfHouse.Judged(movements: CalfHouse.Movements.Replace("load is 4", "load is 1", StringComparison.Ordinal)));
        comparison.Changes.Single().Title.ShouldBe("movement \"heavy raise\": load");
        var move = comparison.Targets.Single().Changes.Single(change => change.Movement == "heavy raise");
        move.Parts.Single().Gap.ShouldBe(-56.25, 1e-9);
        move.Parts.Single().Lines.Single().New!.Line.ShouldBeGreaterThan(1);
    }

    [Fact]
    public void Movements_come_go_are_left_out_and_come_back()
    {
        const string Fifth = "movement fifth raise\n  trains calves\n  load is 1\n  steady is 1\n  posture is sitting\n\n";
        var old = CalfHouse.Judged(more: Fifth + "leave out\n  named light\n  when load is 0");
        var now = CalfHouse.Judged(more: Fifth.Replace("fifth", "sixth", StringComparison.Ordinal) + "leave out\n  named heavy\n  when load is 4");
        var changes = HouseComparer.Compare(old, now).Targets.Single().Changes.ToDictionary(change => change.Movement, change => change.Kind);
        changes["fifth raise"].ShouldBe(PlacementChangeKind.Gone);
        changes["sixth raise"].ShouldBe(PlacementChangeKind.New);
        changes["light raise"].ShouldBe(PlacementChangeKind.NowRanked);
        changes["heavy raise"].ShouldBe(PlacementChangeKind.NowLeftOut);
    }

    [Fact]
    public void Order_and_agreement_at_the_top_are_those_of_the_lists()
    {
        // Old: seated, heavy, plain, light. With heavy rated 1: seated, plain, light 25, heavy 18.75. Of six pairs two are turned: (4 - 2) / 6.
        var target = HouseComparer.Compare(CalfHouse.Judged(), CalfHouse.Judged(movements: CalfHouse.Movements.Replace("load is 4", "load is 1", StringComparison.Ordinal))).Targets.Single();
        target.TauB!.Value.ShouldBe(1 / 3.0, 1e-12);
        // Agreement at depth 1 to 4: 1, 1/2, 2/3, 1. (1 - p) (1 + p/2 + 2p^2/3 + p^3) + p^4, p = 0.9.
        target.Top!.Extrapolated.ShouldBe((0.1 * (1 + 0.45 + 0.54 + 0.729)) + 0.6561, 1e-9);
        target.Common.ShouldBe(4);
    }

    [Fact]
    public void Any_two_houses_have_parts_that_sum_to_every_move_and_tell_the_same_backwards() => SmallHouse.Pairs.Sample(
        pair =>
        {
            var (old, now) = (Judged.Text(pair.Old), Judged.Text(pair.New));
            var comparison = HouseComparer.Compare(old, now);
            foreach (var change in comparison.Targets.SelectMany(target => target.Changes).Where(change => change.Old is not null && change.New is not null))
            {
                change.Parts.Sum(part => part.Gap).ShouldBe(change.New!.Gap - change.Old!.Gap, 1e-8);
                change.Parts.Sum(part => part.Rank).ShouldBe(change.New.Rank - change.Old.Rank, 1e-8);
                change.Parts.Sum(part => part.Tier).ShouldBe(change.New.Tier.Index - change.Old.Tier.Index, 1e-8);
            }

            var back = HouseComparer.Compare(now, old);
            back.Targets.Single().TauB.ShouldBe(comparison.Targets.Single().TauB);
            back.Targets.Single().Changes.Length.ShouldBe(comparison.Targets.Single().Changes.Length);
            back.Changes.Length.ShouldBe(comparison.Changes.Length);
            HouseComparer.Compare(old, Judged.Text(pair.Old)).IsEmpty.ShouldBeTrue();
        },
        iter: 15);

    private static HouseComparison Compare(string rules, string more = "") => HouseComparer.Compare(CalfHouse.Judged(), CalfHouse.Judged(rules, more));
}
