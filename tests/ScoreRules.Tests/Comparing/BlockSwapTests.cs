using ScoreRules.Comparing;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Comparing;

/// <summary>With no block swapped a mixture is the old house; with all of them it is the new one, words of both or not.</summary>
public sealed class BlockSwapTests
{
    [Theory]
    [InlineData("longreach", "longreach-second")]
    [InlineData("longreach", "harbour-lane")]
    [InlineData("harbour-lane", "linden-court")]
    [InlineData("linden-court", "longreach-second")]
    public void The_ends_are_the_houses_themselves(string old, string now)
    {
        var swap = new BlockSwap(Judged.House(old), Judged.House(now));
        Told(swap.Judged(new HashSet<RuleBlock>())).ShouldBe(Told(Judged.House(old)));
        Told(swap.Judged(Enum.GetValues<RuleBlock>().ToHashSet())).ShouldBe(Told(Judged.House(now)));
    }

    [Theory]
    [InlineData(RuleBlock.Criteria)]
    [InlineData(RuleBlock.Tiers)]
    public void A_mixture_differs_where_a_block_that_differs_is_swapped(RuleBlock block)
    {
        var swap = new BlockSwap(Judged.House("longreach"), Judged.House("linden-court"));
        Told(swap.Judged(new HashSet<RuleBlock> { block })).ShouldNotBe(Told(Judged.House("longreach")));
    }

    [Fact]
    public void Words_that_both_houses_have_in_another_order_still_mean_the_same()
    {
        const string Words = "attribute grip\n  one of {0}\n\nattribute kit\n  some of {1}\n\nmuscle soleus\n\ntarget calves\n  made of soleus 1 part\n  benchmark first\n\ntiers\n  High is from 1 point above the benchmark\n  Low is the rest\n\n"
            + "criterion grip\n  counts 1\n  reads grip\n  worth 100% at wide, 0% at narrow\n\ngive 3 points\n  when kit has box\n\nmovement first\n  trains calves\n  grip is narrow\n  kit has bar\n\nmovement second\n  trains calves\n  grip is wide\n  kit has box\n";
        var (old, now) = (Judged.Text(string.Format(System.Globalization.CultureInfo.InvariantCulture, Words, "wide, narrow", "bar, box")), Judged.Text(string.Format(System.Globalization.CultureInfo.InvariantCulture, Words, "narrow, wide", "bench, box, bar")));
        old.HasErrors.ShouldBeFalse(string.Join('\n', old.Findings.Select(finding => finding.Headline)));
        HouseComparer.Compare(old, now).Changes.ShouldBeEmpty();
        Told(new BlockSwap(old, now).Judged(new HashSet<RuleBlock> { RuleBlock.Movements })).ShouldBe(Told(old));
    }

    private static IEnumerable<string> Told(Judgement judgement) => judgement.Rankings.SelectMany(ranking =>
        ranking.Placements.Select(placement => $"{ranking.Target.Name} {placement.Rank} {placement.Row.Movement.Name} {placement.Gap:R} {placement.Tier.Name}")
            .Concat(ranking.LeftOut.Select(row => $"{ranking.Target.Name} - {row.Row.Movement.Name} {row.Score:R}")));
}
