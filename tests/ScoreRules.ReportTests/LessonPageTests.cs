using System.Text;
using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>Lessons, slides and lists of editions as readers meet them: in a real browser, offline, on phone and desk, on paper.</summary>
public sealed class LessonPageTests(ReaderBrowser reader) : IClassFixture<ReaderBrowser>
{
    public static TheoryData<string> Pages() => ["lesson", "slides", "list"];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Nothing_runs_off_the_side_and_nothing_is_asked_of_the_network(string kind)
    {
        foreach (var width in (int[])[320, 390, 768, 1280])
        {
            var page = await reader.Open(Made(kind), width, dark: width == 390);
            (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(width);
        }

        reader.Requests.ShouldBeEmpty();
        reader.Complaints.ShouldBeEmpty();
        Made(kind).ShouldContain("script-src 'none'");
        Made(kind).ShouldNotContain("<script");
    }

    [Theory]
    [InlineData("lesson", 1280, false)]
    [InlineData("lesson", 360, true)]
    [InlineData("slides", 1280, true)]
    [InlineData("slides", 360, false)]
    [InlineData("list", 1280, false)]
    [InlineData("list", 360, true)]
    public async Task The_accessibility_engine_finds_nothing(string kind, int width, bool dark)
    {
        var page = await reader.Open(Made(kind), width, dark);
        var found = await page.RunAxe();
        found.Violations.Select(violation => $"{violation.Id}: {violation.Help}: {violation.Nodes[0].Html}").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("longreach")]
    [InlineData("harbour-lane")]
    [InlineData("linden-court")]
    public async Task Each_movement_is_one_sheet_on_paper(string house)
    {
        foreach (var target in Houses.Shipped(house).Rankings.Select(ranking => ranking.Target.Name))
        {
            var page = await reader.Open(Lessons.Slides(house, target), 1280);
            var paper = Encoding.Latin1.GetString(await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true }));

            // The opening, each movement, the list.
            (paper.Split("/Type /Page\n").Length - 1).ShouldBe(Lessons.Of(house, target).Steps.Length + 2, target);
        }
    }

    [Fact]
    public async Task A_movement_shows_its_caution_before_the_question_and_the_question_before_the_points()
    {
        var page = await reader.Open(Made("lesson"), 390);
        (await page.Locator(".step").CountAsync()).ShouldBe(12);
        var second = page.Locator("#s2");
        (await second.Locator("h2").TextContentAsync())!.ShouldContain("Standing leg curl");
        string[] parts = [".caution", ".ask", ".move", ".parts", ".place"];
        var tops = new List<float>();
        foreach (var part in parts)
        {
            tops.Add((await second.Locator(part).BoundingBoxAsync())!.Y);
        }

        tops.ShouldBe(tops.Order());
        await second.Locator(".beside a").ClickAsync();
        (await page.EvaluateAsync<string>("location.hash")).ShouldBe("#s1");
    }

    [Fact]
    public async Task The_points_on_a_page_add_up_as_printed()
    {
        var page = await reader.Open(Made("lesson"), 1280);
        foreach (var step in Lessons.Of("longreach", "hamstrings").Steps.Skip(1))
        {
            var shown = await page.Locator($"#s{step.Number} .parts em").AllTextContentsAsync();
            var sum = shown.Sum(text => double.Parse(text.Replace('−', '-'), System.Globalization.CultureInfo.InvariantCulture));
            sum.ShouldBe(step.Difference, 0.051 * shown.Count + 0.001, step.Movement);
        }
    }

    [Fact]
    public void Every_link_of_a_lesson_leads_somewhere_on_the_page()
    {
        var page = Made("slides");
        var ids = Found(page, " id=\"(?<it>[^\"]+)\"").ToList();
        ids.Count.ShouldBe(ids.Distinct(StringComparer.Ordinal).Count());
        Found(page, "href=\"(?<it>[^\"]+)\"").Select(link => link.TrimStart('#')).Except(ids, StringComparer.Ordinal).ShouldBeEmpty();
    }

    [Fact]
    public async Task The_list_names_what_changed_and_a_hostile_name_is_text()
    {
        var page = await reader.Open(Made("list"), 390);
        (await page.Locator(".referral").CountAsync()).ShouldBe(0);
        (await page.Locator(".house", new PageLocatorOptions { HasTextString = "Willow" }).Locator(".caution").TextContentAsync())!.ShouldContain("Stop at pain.");
        var newest = page.Locator(".newest").Last;
        (await newest.Locator(".summed").TextContentAsync()).ShouldBe("Since 1 January 2031 (edition 0123456789ab): 5 placements changed.");
        var told = await newest.Locator(".changes li").AllTextContentsAsync();
        told.ShouldContain("New caution: Hold a rail.");
        told.ShouldContain("bent raise: from Low to High, 20.0 to 95.0\u00a0points");
        told.ShouldContain("<script>alert(1)</script>: new, in Low with 3.0\u00a0points");
        (await newest.Locator(".forms a").First.GetAttributeAsync("href")).ShouldBe("willow-1.1.0/page.html");
        reader.Complaints.ShouldBeEmpty();
    }

    private static string Made(string kind) => kind switch
    {
        "lesson" => Lessons.Page("longreach", "hamstrings"),
        "slides" => Lessons.Slides("linden-court", "quadriceps"),
        _ => Lessons.List(),
    };

    private static IEnumerable<string> Found(string page, string pattern) => Regex.Matches(page, pattern, RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10)).Select(match => match.Groups["it"].Value);
}
