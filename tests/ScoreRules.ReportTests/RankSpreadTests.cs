using ScoreRules.Certainty;
using ScoreRules.Report;
using ScoreRules.Report.Views;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>The picture of ranks, against lengths worked out by hand: 280 wide, eight columns of 35 at least, the tallest 56 above a base at 72.</summary>
public sealed class RankSpreadTests
{
    [Fact]
    public void Columns_are_as_tall_as_their_share_and_the_printed_rank_stands_apart()
    {
        var spread = Spread(2, 0.3, 0.5, 0.2);
        spread.Words.ShouldBe("Rank 1 in 30 of 100 tries, rank 2 in 50, rank 3 in 20");
        spread.Outline(own: true).ShouldBe("M36.5 72v-56h32v56z");
        spread.Outline(own: false).ShouldBe("M1.5 72v-33.6h32v33.6zM71.5 72v-22.4h32v22.4z");
        spread.Columns.ShouldAllBe(column => spread.IsCounted(column) && spread.IsNamed(column));
    }

    [Fact]
    public void A_printed_rank_that_no_try_reaches_keeps_its_name_without_a_column()
    {
        var spread = Spread(2, 0, 0, 0.996, 0.004);
        spread.Columns.Select(column => column.Rank).ShouldBe([2, 3]);
        spread.Words.ShouldBe("Rank 3 in over 99 of 100 tries");
        spread.Outline(own: true).ShouldBe("");
        spread.IsNamed(spread.Columns[0]).ShouldBeTrue();
        spread.IsCounted(spread.Columns[0]).ShouldBeFalse();
    }

    [Fact]
    public void Many_ranks_are_named_at_the_ends_and_where_it_stands_so_that_no_two_words_touch()
    {
        var spread = Spread(2, [.. Enumerable.Repeat(0.05, 20)]);
        spread.Columns.Where(spread.IsNamed).Select(column => column.Rank).ShouldBe([2, 20]);
        spread.Columns.Where(spread.IsCounted).Select(column => column.Rank).ShouldBe([2]);
    }

    [Fact]
    public void The_picture_stands_on_each_card_that_was_tried_and_on_no_page_without_tries()
    {
        var tried = Houses.Longreach.Rankings.Sum(ranking => ranking.Placements.Count(placement => !placement.IsBenchmark));
        (Houses.LongreachPage.Split("<figure class=\"ranks\">").Length - 1).ShouldBe(tried);
        Houses.LongreachPage.ShouldMatch("role=\"img\" aria-label=\"Rank \\d+ in (over )?\\d+ of 100 tries");
        HouseReport.Render(Houses.Longreach).ShouldNotContain("class=\"ranks\"");
    }

    private static RankSpread Spread(int printed, params double[] ranks)
    {
        var placement = Houses.Longreach.Rankings[0].Placements[0] with { Rank = printed };
        return new RankSpread(new PlacementCertainty(placement, [1], [.. ranks], 0, 0));
    }
}
