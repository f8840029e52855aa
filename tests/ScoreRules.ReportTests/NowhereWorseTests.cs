using ScoreRules.Houses;
using ScoreRules.Report;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>A movement below one that is nowhere better says so on its card, and only there.</summary>
public sealed class NowhereWorseTests
{
    private const string Judged = """

        place wall raise
          one tier lower
          because people forget it

        """;

    [Fact]
    public void A_card_says_that_its_marks_equal_or_beat_those_above_it_and_what_put_it_below()
    {
        var page = Page(Judged);
        page.ShouldContain("<p class=\"beside\">Its marks equal or beat those of the bench raise on every criterion and award, yet it stands below. A personal judgement does that (house.rules:37): \"People forget it.\"</p>");
        page.Split("class=\"beside\"").Length.ShouldBe(2);
    }

    [Fact]
    public void Nothing_is_said_where_nothing_of_the_kind_is_true() => Page("").ShouldNotContain("class=\"beside\"");

    private static string Page(string more)
    {
        var judgement = Judge.Run(new HouseSources([new HouseFile("house.rules", Rules + more, "", IsSpreadsheet: false)], []));
        judgement.HasErrors.ShouldBeFalse();
        return HouseReport.Render(judgement);
    }

    private const string Rules = """
        ruleset Millpond
          version 1
          allows its authors 1 personal judgement

        muscle soleus

        attribute steadiness
          rated 0 to 4

        target calves
          made of soleus 100 parts
          benchmark plain raise

        tiers
          Above is from 20 points above the benchmark
          Middle is from 5 points above the benchmark
          The rest is the rest

        criterion steadiness
          counts 10 parts
          reads steadiness
          worth 0% at 0, 100% at 4

        movement plain raise
          trains calves
          steadiness is 0

        movement bench raise
          trains calves
          steadiness is 3

        movement wall raise
          trains calves
          steadiness is 4


        """;
}
