using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using ScoreRules.Houses;
using ScoreRules.Report;
using ScoreRules.Report.Views;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

public sealed class RenderingTests
{
    public static TheoryData<string> Houses_shipped() => ["longreach", "longreach-second", "harbour-lane", "linden-court"];

    /// <summary>"lets the reader guess first" in the ruleset: Longreach says it, Linden Court does not.</summary>
    [Theory]
    [InlineData("longreach", true)]
    [InlineData("linden-court", false)]
    public void Guessing_is_offered_where_the_house_lets_its_readers_guess(string folder, bool isOffered) =>
        Houses.Page(folder).Contains("data-view=\"guess\"", StringComparison.Ordinal).ShouldBe(isOffered);

    [Fact]
    public void The_same_house_gives_the_same_bytes_in_any_order_of_files()
    {
        var sources = Houses.Longreach.Sources;
        var turned = Judge.Run(sources with { Files = [.. sources.Files.Reverse()] });
        var page = HouseReport.Render(turned, slots: null, Certainty.HouseCertainty.Of(turned));
        (page == Houses.LongreachPage).ShouldBeTrue("the pages differ");
    }

    [Theory]
    [MemberData(nameof(Houses_shipped))]
    public void Every_house_stays_under_two_megabytes(string house) =>
        System.Text.Encoding.UTF8.GetByteCount(Houses.Page(house)).ShouldBeLessThan(2_000_000);

    [Fact]
    public void A_list_of_rules_names_a_file_once_running() =>
        Houses.LongreachPage.ShouldMatch(@"\(<a href=""#r\d+"">house\.rules:\d+</a>\): [^<]+<li>[^<]+\(<a href=""#r\d+"">line \d+</a>\): ");

    [Theory]
    [MemberData(nameof(Houses_shipped))]
    public void Nothing_is_asked_of_the_network_and_no_inline_code_is_allowed(string house)
    {
        var page = Houses.Page(house);
        page.ShouldContain("default-src 'none'; style-src 'sha256-");
        page.ShouldNotContain("unsafe-inline");
        Count(page, @"\s(?:src|srcset|style|on[a-z]+)=""").ShouldBe(0);
        Count(page, @"href=""(?!#)").ShouldBe(0);
        Count(page, "<script").ShouldBe(1);
    }

    [Theory]
    [MemberData(nameof(Houses_shipped))]
    public void Every_placement_has_a_row_a_card_and_a_trail(string house)
    {
        var rankings = Houses.Shipped(house).Rankings;
        var placed = rankings.Sum(ranking => ranking.Placements.Length);
        var leftOut = rankings.Sum(ranking => ranking.LeftOut.Length);
        Count(Houses.Page(house), "<li class=\"row\"").ShouldBe(placed);
        Count(Houses.Page(house), "<div id=\"c").ShouldBe(placed + leftOut);
        Count(Houses.Page(house), "<details class=\"trail\">").ShouldBe(placed + leftOut);
    }

    [Fact]
    public void Every_link_leads_somewhere_on_the_page()
    {
        var page = Houses.LongreachPage;
        var ids = Found(page, " id=\"(?<it>[^\"]+)\"").ToList();
        ids.Count.ShouldBe(ids.Distinct(StringComparer.Ordinal).Count(), "an anchor is used twice");
        var links = Found(page, "href=\"#(?<it>[^\"]+)\"").Distinct(StringComparer.Ordinal).ToList();
        links.Except(ids, StringComparer.Ordinal).ShouldBeEmpty();
    }

    [Fact]
    public void A_card_shows_cautions_then_the_verdict_then_reasons_then_the_trail()
    {
        var page = Houses.LongreachPage;
        var card = page[page.IndexOf("<h3>Good morning</h3>", StringComparison.Ordinal)..];
        string[] parts = ["class=\"caution\"", "class=\"verdict\"", "class=\"reasons\"", "class=\"bars\"", "class=\"trail\"", "<b>Given facts</b>", "<b>Criteria</b>", "<b>Evidence</b>", "<b>Tier</b>", "<b>Left out</b>", "class=\"silent\""];
        var places = parts.Select(part => card.IndexOf(part, StringComparison.Ordinal)).ToList();
        places.ShouldAllBe(place => place > 0);
        places.ShouldBe(places.Order());
    }

    [Fact]
    public void The_trail_names_the_line_of_the_rule_and_of_the_fact_and_what_failed_first()
    {
        var page = Houses.LongreachPage;
        page.ShouldMatch(@"<a href=""#r\d+"">house\.rules:\d+</a>; fact line \d+");
        page.ShouldContain("): asks \"loadability is at most 1\", found loadability 3 of 4");
        page.ShouldNotContain("rulesets/");
    }

    [Fact]
    public void A_house_that_builds_on_another_shows_both_sides_of_a_change()
    {
        var page = Houses.Page("harbour-lane");
        page.ShouldContain("What was changed of the house below");
        page.ShouldMatch(@"where Longreach says ""[^""]+"" \(longreach/house\.rules:\d+\)");
    }

    [Fact]
    public void What_mechanics_derives_stands_at_its_step_with_its_origin()
    {
        var page = Houses.Page("longreach-second");
        page.ShouldMatch(@"<b>Mechanics</b><div><p>[^<]+, derived");
        Houses.LongreachPage.ShouldContain("No criterion here reads what mechanics derives.");
    }

    [Fact]
    public void What_is_left_out_keeps_its_reason() =>
        Houses.LongreachPage.ShouldMatch("Left out\\. \"We do not load the neck\\.\" It keeps its score, \\d");

    [Fact]
    public void A_hostile_name_is_text_everywhere()
    {
        var judgement = Houses.Hostile();
        judgement.Findings.Where(finding => finding.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
        var page = HouseReport.Render(judgement);
        Count(page, "<script").ShouldBe(1);
        Count(page, "</style>").ShouldBe(1);
        page.ShouldNotContain("<img");
        page.ShouldContain("&lt;script&gt;alert(1)&lt;/script&gt;");
    }

    [Fact]
    public void The_text_of_a_rule_keeps_its_lines_and_their_indent() =>
        Houses.LongreachPage.ShouldContain("<pre>criterion stability&#xA;  counts 12 parts");

    [Fact]
    public void A_profile_puts_the_referral_first_and_lists_what_it_sets_aside()
    {
        var page = HouseReport.Render(Judge.Run(HouseFolder.Read(Path.Combine(Houses.Root, "rulesets", "longreach")), "tender elbow"));
        var referral = page.IndexOf("See a licensed clinician before continuing", StringComparison.Ordinal);
        referral.ShouldBeInRange(0, page.IndexOf("<h1", StringComparison.Ordinal));
        page.ShouldContain("This page cannot judge a sore elbow.");
        page.ShouldContain("Set aside for tender elbow");
        page.ShouldContain("lower in this flag (1 of 3), not free of it");
        page.ShouldContain("<b>Avoid for now, rated to load the elbow more:</b>");
    }

    [Fact]
    public void A_slot_shows_what_it_is_given_and_nothing_where_there_is_nothing()
    {
        RenderFragment sure = builder => builder.AddMarkupContent(0, "<h4>How sure</h4>");
        var slots = ReportSlots.None with { HowSure = explained => explained.Row.Movement.Name == "seated leg curl" ? sure : null, Span = placement => (placement.Gap - 3, placement.Gap + 3) };
        var page = HouseReport.Render(Houses.Longreach, slots);
        Count(page, "How sure</h4>").ShouldBe(1);
        page.ShouldContain("class=\"span\"");
        var plain = HouseReport.Render(Houses.Longreach);
        plain.ShouldNotContain("class=\"slot\"");
        plain.ShouldNotContain("class=\"span\"");
    }

    private static int Count(string page, string pattern) => Regex.Count(page, pattern, RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10));

    private static IEnumerable<string> Found(string page, string pattern) => Regex.Matches(page, pattern, RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10)).Select(match => match.Groups["it"].Value);
}
