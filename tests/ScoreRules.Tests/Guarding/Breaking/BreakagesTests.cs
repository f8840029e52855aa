using ScoreRules.Guarding.Breaking;
using ScoreRules.Publishing.Guards;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding.Breaking;

/// <summary>Which breakages there are, and that each is what the same edit of the text would be.</summary>
public sealed class BreakagesTests
{
    private const string Weighed = """
        study A
          compares movements
          found light raise is within 5 points of heavy raise
          outcome muscle growth
          people 20 adults
          lasted 8 weeks
          design within person
          weigh it

        """;

    private const string Studies = """
        ruleset calves
          version 1
          judges muscle growth

        evidence
          principles may be off by 6 points
          a lone study adds 3 points of doubt
          spreads to movements at least 60% alike

        study B
          compares movements
          found light raise is within 5 points of plain raise
          outcome muscle growth
          people 20 adults
          lasted 8 weeks
          design within person
          show it


        """ + Weighed;

    [Fact]
    public void Every_rule_weight_and_border_is_broken_in_every_way_that_fits_it() =>
        Breakages.Of(CalfHouse.Judged().Ruleset).Select(BreakageWords.Title).ShouldBe(
        [
            "criterion \"load\" taken out", "criterion \"load\" halved", "criterion \"load\" doubled", "criterion \"load\" turned round",
            "criterion \"steady\" taken out", "criterion \"steady\" halved", "criterion \"steady\" doubled", "criterion \"steady\" turned round",
            "give \"sits\" taken out", "give \"sits\" halved", "give \"sits\" doubled", "give \"sits\" turned round", "give \"sits\" with the opposite of \"posture is sitting\"",
            "tier \"High\" moved up", "tier \"High\" moved down", "tier \"Middle\" moved up", "tier \"Middle\" moved down",
        ]);

    [Theory]
    [InlineData("never above Low\n  when load is at least 3 and posture is sitting\n  except for heavy raise because so", "never above taken out", "never above turned round", "never above moved up", "never above without \"load is at least 3\"", "never above with the opposite of \"load is at least 3\"", "never above with a higher number in \"load is at least 3\"", "never above with a lower number in \"load is at least 3\"", "never above without \"posture is sitting\"", "never above with the opposite of \"posture is sitting\"", "never above without its \"except for\"")]
    [InlineData("leave out\n  named off\n  when load is at least 4\n  only for calves", "leave out \"off\" taken out", "leave out \"off\" with the opposite of \"load is at least 4\"", "leave out \"off\" with a higher number in \"load is at least 4\"", "leave out \"off\" with a lower number in \"load is at least 4\"", "leave out \"off\" without its \"only for\"")]
    [InlineData("place heavy raise\n  one tier lower\n  because so", "place \"heavy raise\" taken out", "place \"heavy raise\" turned round")]
    [InlineData("call heavy\n  when load is 4", "call \"heavy\" taken out", "call \"heavy\" with the opposite of \"load is 4\"", "call \"heavy\" with a higher number in \"load is 4\"", "call \"heavy\" with a lower number in \"load is 4\"")]
    [InlineData("work out sum\n  start with 3 kg\n  plus 2 kg\n    when load is 4\n  in kg", "work out \"sum\" with \"start with 3 kg\" halved", "work out \"sum\" with \"start with 3 kg\" doubled", "work out \"sum\" without \"plus 2 kg\"", "work out \"sum\" with \"plus 2 kg\" halved", "work out \"sum\" with \"plus 2 kg\" doubled")]
    public void Other_statements_are_broken_too(string more, params string[] expected)
    {
        var usual = Breakages.Of(CalfHouse.Judged().Ruleset).Select(BreakageWords.Title).ToHashSet(StringComparer.Ordinal);
        Breakages.Of(CalfHouse.Judged(more: more).Ruleset).Select(BreakageWords.Title).Where(title => !usual.Contains(title)).ShouldBe(expected);
    }

    [Fact]
    public void Studies_and_how_they_are_weighed_are_broken_but_not_what_is_only_shown() =>
        Breakages.Of(CalfHouse.Judged(more: Studies).Ruleset).Select(BreakageWords.Title).Skip(17).ShouldBe(
        [
            "evidence, \"principles may be off\" halved", "evidence, \"principles may be off\" doubled", "evidence, \"a lone study adds\" halved", "evidence, \"a lone study adds\" doubled",
            "evidence, \"spreads to movements\" taken out", "evidence, \"whether benchmarks keep their score\" turned round",
            "study \"A\" taken out", "study \"A\" halved", "study \"A\" doubled", "study \"A\" turned round", "study \"A\" moved down", "study \"A\" moved up",
        ]);

    [Theory]
    [InlineData("study \"A\" taken out", Weighed, "")]
    [InlineData("study \"A\" turned round", "found light raise is within 5 points of heavy raise", "found heavy raise is within 5 points of light raise")]
    [InlineData("study \"A\" doubled", "within 5 points", "within 10 points")]
    [InlineData("study \"A\" moved down", "weigh it", "show it")]
    [InlineData("study \"A\" moved up", "weigh it", "let it decide")]
    [InlineData("evidence, \"principles may be off\" halved", "off by 6 points", "off by 3 points")]
    public void A_broken_study_is_what_the_same_edit_of_the_text_is(string title, string words, string edited)
    {
        Studies.ShouldContain(words);
        var before = CalfHouse.Judged(more: Studies);
        var broken = Breakages.Of(before.Ruleset).Single(breakage => BreakageWords.Title(breakage) == title);
        Told(Judge.Again(before, broken.Ruleset, before.Catalogue)).ShouldBe(Told(CalfHouse.Judged(more: Studies.Replace(words, edited, StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData("criterion \"load\" taken out", "criterion load\n  counts 30\n  reads load\n  worth 0% at 0, 100% at 4\n", "")]
    [InlineData("criterion \"load\" halved", "counts 30", "counts 15")]
    [InlineData("criterion \"load\" doubled", "counts 30", "counts 60")]
    [InlineData("criterion \"load\" turned round", "reads load\n  worth 0% at 0, 100% at 4", "reads load\n  worth 100% at 0, 0% at 4")]
    [InlineData("give \"sits\" halved", "give 5 points", "give 2.5 points")]
    [InlineData("give \"sits\" turned round", "give 5 points", "take 5 points")]
    [InlineData("give \"sits\" with the opposite of \"posture is sitting\"", "posture is sitting", "posture is other than sitting")]
    [InlineData("tier \"High\" moved up", "from 20 points", "from 35 points")]
    [InlineData("tier \"Middle\" moved down", "from 10 points", "from 25 points")]
    public void A_breakage_is_what_the_same_edit_of_the_text_is(string title, string words, string edited)
    {
        CalfHouse.Rules.ShouldContain(words);
        var before = CalfHouse.Judged();
        var broken = Breakages.Of(before.Ruleset).Single(breakage => BreakageWords.Title(breakage) == title);
        Told(Judge.Again(before, broken.Ruleset, before.Catalogue)).ShouldBe(Told(CalfHouse.Judged(CalfHouse.Rules.Replace(words, edited, StringComparison.Ordinal))));
    }

    private static IEnumerable<string> Told(Judgement judgement) =>
        judgement.Rankings.SelectMany(ranking => ranking.Placements).Select(placement => $"{placement.Rank} {placement.Row.Movement.Name} {placement.Score:R} {placement.Tier.Name}");
}
