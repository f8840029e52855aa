using Shouldly;
using Xunit;
using static ScoreRules.Tests.Overlays.OverlayHouse;

namespace ScoreRules.Tests.Overlays;

/// <summary>The day to judge for is an input. "from" includes its day, "until" excludes it, so that the two meet.</summary>
public sealed class DateTests
{
    private const string Both = """
        give 6 points
          named until June
          when reach is 1
          until 1 June 2032

        give 2 points
          named from June
          when reach is 1
          from 1 June 2032
        """;

    [Theory]
    [InlineData(2032, 5, 31, "until June", "from June")]
    [InlineData(2032, 6, 1, "from June", "until June")]
    public void Exactly_one_of_two_that_meet_is_in_force(int year, int month, int day, string holds, string absent)
    {
        var judgement = Judge(new DateOnly(year, month, day), Quayside(Both));

        judgement.Ruleset.Awards.Select(award => award.Info.Name).ShouldBe(["both at once", holds], ignoreOrder: true);
        judgement.Ruleset.NotInForce.Select(info => info.Name).ShouldBe([absent]);
        judgement.Ruleset.Date.ShouldBe(new DateOnly(year, month, day));
    }

    [Fact]
    public void Without_a_day_the_house_is_judged_for_the_day_on_which_it_was_checked()
    {
        var judgement = Judge(Quayside(Both).Replace("builds on Longshore", "builds on Longshore\n  checked 2 June 2032 by the morning coach", StringComparison.Ordinal));

        judgement.Ruleset.Date.ShouldBe(new DateOnly(2032, 6, 2));
        judgement.Ruleset.NotInForce.Select(info => info.Name).ShouldBe(["until June"]);
    }

    [Fact]
    public void Without_any_day_dates_are_an_error() => Judge(Quayside(Both)).Found().ShouldBe(["SR3011 This house has dates, and the day to judge for is not known"]);

    [Fact]
    public void A_house_without_dates_needs_no_day_and_names_none() => Judge(new DateOnly(2032, 6, 1)).Ruleset.Date.ShouldBeNull();

    [Fact]
    public void A_movement_that_is_not_there_yet_is_left_out_with_the_day()
    {
        var ranking = Judge(new DateOnly(2032, 5, 31), Quayside("change movement long curl\n  from 1 June 2032\n\ndrop expectation long curl is above bar curl\n  because it comes later\n")).Rankings.Single();

        ranking.LeftOut.Single().Rules.Single().Info.Because.ShouldBe("not there before 1 June 2032");
    }

    [Fact]
    public void A_change_with_a_date_holds_only_from_that_day()
    {
        var house = Quayside("change criterion long\n  counts 7 parts\n  from 1 June 2032\n");

        Judge(new DateOnly(2032, 5, 31), house).Placements().ShouldBe(Judge().Placements());
        Judge(new DateOnly(2032, 6, 1), house).Placements().ShouldNotBe(Judge().Placements());
    }

    [Fact]
    public void A_fact_whose_every_statement_is_out_of_force_is_not_called()
    {
        var house = Quayside("call near\n  when reach is at most 1\n  until 1 June 2032\n\ngive 3 points\n  named close by\n  when near\n");

        Judge(new DateOnly(2032, 5, 31), house).Placements().ShouldNotBe(Judge().Placements());
        Judge(new DateOnly(2032, 6, 1), house).Placements().ShouldBe(Judge().Placements());
    }
}
