using ScoreRules.Houses;
using Shouldly;
using Xunit;
using static ScoreRules.Tests.Overlays.OverlayHouse;

namespace ScoreRules.Tests.Overlays;

/// <summary>Days on what rules are made of: words, tiers, weights and profiles. Of two that meet, one holds on each day.</summary>
public sealed class DatedWordsTests
{
    private const string Words = """
        say a lot means 6 points
          until 1 June 2032

        say a lot means 9 points
          from 1 June 2032

        give a lot
          named much
          when reach is 1
        """;

    private const string Tiers = """
        tiers
          Keep is from 5 points above the benchmark
          Level is within 5 points of the benchmark
          Swap is the rest
          until 1 June 2032

        tiers
          Keep is from 8 points above the benchmark
          Level is within 8 points of the benchmark
          Later is the rest
          from 1 June 2032
        """;

    private static readonly DateOnly May = new(2032, 5, 31);
    private static readonly DateOnly June = new(2032, 6, 1);

    [Fact]
    public void A_word_means_what_it_means_on_the_day()
    {
        Much(Judge(May, Quayside(Words))).ShouldBe(6);
        Much(Judge(June, Quayside(Words))).ShouldBe(9);
    }

    [Fact]
    public void A_word_without_a_meaning_on_the_day_is_told_where_it_is_used() =>
        Judge(June, Quayside(Words.Replace("from 1 June 2032", "from 1 July 2032", StringComparison.Ordinal))).Found().ShouldBe(["SR3013 \"a lot\" is not in force on 1 June 2032"]);

    [Fact]
    public void A_rule_of_the_same_days_may_use_it() =>
        Judge(June, Quayside("say a lot means 6 points\n  until 1 June 2032\n\ngive a lot\n  named much\n  when reach is 1\n  until 1 June 2032\n")).Found().ShouldBeEmpty();

    [Fact]
    public void Without_a_day_one_message_says_so() =>
        Judge(Quayside(Words)).Found().ShouldBe(["SR3011 This house has dates, and the day to judge for is not known"]);

    [Fact]
    public void Tiers_are_those_of_the_day()
    {
        Of(May, Tiers).Ruleset.Tiers.Select(tier => $"{tier.Name} {tier.Amount}").ShouldBe(["Keep 5", "Level 5", "Swap 0"]);
        Of(June, Tiers).Ruleset.Tiers.Select(tier => $"{tier.Name} {tier.Amount}").ShouldBe(["Keep 8", "Level 8", "Later 0"]);
        Of(June, Tiers).Ruleset.NotInForce.Select(info => info.Kind).ShouldBe(["tiers"]);
    }

    [Fact]
    public void Two_lists_of_tiers_for_one_day_are_one_too_many() =>
        Of(June, Tiers.Replace("until 1 June", "until 1 July", StringComparison.Ordinal)).Found().ShouldContain("SR2002 Tiers are declared twice");

    [Fact]
    public void A_day_without_tiers_is_told() =>
        Of(June, Tiers.Split("\n\n")[0]).Found().ShouldContain("SR3013 No tiers are in force on 1 June 2032");

    [Fact]
    public void A_tier_of_other_days_cannot_be_asked_for() =>
        Of(June, Tiers + "\n\nexpect loose curl is no higher than Swap\n").Found().ShouldBe(["SR3013 \"Swap\" is not in force on 1 June 2032"]);

    [Fact]
    public void Weights_are_those_of_the_day()
    {
        var house = Base.Replace("counts 10 parts", "counts by weights", StringComparison.Ordinal).Replace("counts 30 parts give or take 6 parts", "counts by weights", StringComparison.Ordinal)
            + "\n\nweights\n  order steady, long\n  until 1 June 2032\n\nweights\n  order long, steady\n  from 1 June 2032\n";

        // The narrower order of two: 3/4 and 1/4 (Barron and Barrett 1996).
        Steady(Alone(May, house)).ShouldBe(75, 1e-9);
        Steady(Alone(June, house)).ShouldBe(25, 1e-9);
    }

    [Fact]
    public void Without_weights_on_the_day_the_message_shows_those_of_other_days() =>
        Alone(June, Base.Replace("counts 10 parts", "counts by weights", StringComparison.Ordinal) + "\n\nweights\n  order steady, long\n  until 1 June 2032\n")
            .Findings.Single(finding => finding.Code == "SR5012").Others.Single().Text.ShouldBe("not in force on this day");

    [Fact]
    public void A_profile_of_other_days_is_refused_by_name()
    {
        var sources = Sources(Quayside("profile at home\n  kit bar\n  until 1 June 2032\n"));

        Should.Throw<HouseException>(() => ScoreRules.Judge.Run(sources, "at home", June)).Message.ShouldContain("is not in force on 1 June 2032");
        ScoreRules.Judge.Run(sources, "at home", May).Profile!.Name.ShouldBe("at home");
    }

    [Theory]
    [InlineData("attribute calm\n  rated 0 to 4\n")]
    [InlineData("muscle soleus\n")]
    [InlineData("target calves\n  made of biceps 100 parts\n  benchmark bar curl\n")]
    [InlineData("work out time\n  start with 10 s\n  in s\n")]
    public void What_rules_speak_of_has_no_days(string statement) =>
        Judge(June, Quayside(statement + "  from 1 June 2032\n")).Found().ShouldBe([$"SR3012 \"{(statement.StartsWith("work", StringComparison.Ordinal) ? "work out" : statement.Split(' ')[0])}\" holds on every day, so \"from\" has no place in it"]);

    private static double Much(Judgement judgement) => judgement.Ruleset.Awards.Single(award => award.Info.Name == "much").Points;

    private static double Steady(Judgement judgement) => judgement.Ruleset.Criteria.Single(criterion => criterion.Name == "steady").Weights.Single().Amount!.Number;

    // The base with these tiers in place of its own.
    private static Judgement Of(DateOnly day, string tiers) =>
        Alone(day, string.Join("\n\n", Base.ReplaceLineEndings("\n").Split("\n\n").Where(statement => !statement.StartsWith("tiers", StringComparison.Ordinal))) + "\n\n" + tiers + "\n");

    private static Judgement Alone(DateOnly day, string house) =>
        ScoreRules.Judge.Run(new HouseSources([new HouseFile("house.rules", house, "", IsSpreadsheet: false)], []), profile: null, day);
}
