using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using ScoreRules.Report;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>The page as readers meet it: in a real browser, offline, on phone and desk, with and without scripts, on paper.</summary>
public sealed class ReadingTests(ReaderBrowser reader) : IClassFixture<ReaderBrowser>
{
    private const string Hamstrings = ".target[data-name=hamstrings]";

    [Theory]
    [InlineData(320, false)]
    [InlineData(360, false)]
    [InlineData(768, false)]
    [InlineData(1280, false)]
    [InlineData(320, true)]
    public async Task Nothing_runs_off_the_side_even_with_all_cards_and_trails_open(int width, bool dark)
    {
        var page = await reader.Open(Houses.LongreachPage, width, dark);
        (await Width(page)).ShouldBeLessThanOrEqualTo(width);
        await page.EvaluateAsync("document.querySelectorAll('.target[data-name=hamstrings] details, .book details, .kit').forEach(part => { part.open = true })");
        (await Width(page)).ShouldBeLessThanOrEqualTo(width);
        await page.ClickAsync($"{Hamstrings} [data-view=compare]");
        (await Width(page)).ShouldBeLessThanOrEqualTo(width);
        await page.ClickAsync($"{Hamstrings} [data-view=guess]");
        (await Width(page)).ShouldBeLessThanOrEqualTo(width);
        reader.Requests.ShouldBeEmpty();
        reader.Complaints.ShouldBeEmpty();
    }

    [Fact]
    public async Task With_scripts_off_everything_is_there_and_says_what_is_not()
    {
        var page = await reader.Open(Houses.LongreachPage, 360, scripts: false);
        (await page.Locator("noscript, .target").First.TextContentAsync())!.ShouldContain("need scripts");
        (await page.Locator("#tools").IsVisibleAsync()).ShouldBeFalse();
        (await page.Locator($"{Hamstrings} .row").CountAsync()).ShouldBe(12);
        (await page.Locator($"{Hamstrings} .views").IsVisibleAsync()).ShouldBeFalse();

        // The browser itself opens what a link points into.
        await page.ClickAsync($"{Hamstrings} .row h4 a >> nth=0");
        await page.Locator($"{Hamstrings} .card >> nth=0 >> .verdict").WaitForAsync();
        (await page.Locator($"{Hamstrings} .card >> nth=0 >> .verdict").TextContentAsync())!.ShouldContain("About 21\u00a0points above the lying leg curl.");
    }

    [Fact]
    public async Task A_sore_joint_puts_the_referral_above_each_list_and_says_what_is_lost()
    {
        var page = await reader.Open(Houses.LongreachPage, 1280);
        (await page.Locator("#referral").IsVisibleAsync()).ShouldBeFalse();
        await page.CheckAsync("#sore input[data-name='lower back']", new PageCheckOptions { Force = true });
        var referral = page.Locator($"{Hamstrings} .referral");
        (await referral.TextContentAsync())!.ShouldContain("See a licensed clinician before continuing");
        (await referral.TextContentAsync())!.ShouldContain("This page cannot judge a sore lower back.");
        (await Above(referral, page.Locator($"{Hamstrings} h2").Nth(1))).ShouldBeTrue();
        (await page.Locator($"{Hamstrings} .mine").TextContentAsync()).ShouldBe("7 of 12 movements remain. Nothing at the top is lost.");
        var aside = (await page.Locator($"{Hamstrings} .aside").TextContentAsync())!;
        aside.ShouldContain("Avoid for now, rated to load the lower back more: ");
        aside.ShouldContain("good morning");
        (await page.Locator($"{Hamstrings} .row:visible").CountAsync()).ShouldBe(7);
        await page.FillAsync("#find", "good morning");
        await page.ClickAsync("#found a");
        (await page.Locator(".card[open] .setaside").TextContentAsync()).ShouldBe("Set aside in your view. Avoid for now, rated to load the lower back more.");
        await page.UncheckAsync("#sore input[data-name='lower back']", new PageUncheckOptions { Force = true });
        (await page.Locator(".referral:visible").CountAsync()).ShouldBe(0);
        (await page.Locator($"{Hamstrings} .row:visible").CountAsync()).ShouldBe(12);
    }

    [Fact]
    public async Task Kit_that_is_missing_sets_aside_and_names_the_cost()
    {
        var page = await reader.Open(Houses.LongreachPage, 1280);
        await page.ClickAsync(".kit summary");
        await page.Locator("#kit label", new PageLocatorOptions { HasTextString = "seated leg curl machine" }).Locator("input").UncheckAsync(new LocatorUncheckOptions { Force = true });
        (await page.Locator($"{Hamstrings} .mine").TextContentAsync()).ShouldBe("11 of 12 movements remain. The first choice falls from 85.3 (seated leg curl) to 82.6 (one-leg romanian deadlift).");
        (await page.Locator($"{Hamstrings} .aside").TextContentAsync())!.ShouldContain("Not in this gym, seated leg curl machine: seated leg curl.");
        (await page.Locator($"#contents [data-to={await page.Locator(Hamstrings).GetAttributeAsync("id")}]").TextContentAsync())!.ShouldContain("one-leg romanian deadlift and dumbbell romanian deadlift");
        await page.ClickAsync("#kitnone");
        (await page.Locator("#kitsaid").TextContentAsync()).ShouldBe("nothing");
        await page.ClickAsync("#kitall");
        (await page.Locator($"{Hamstrings} .row:visible").CountAsync()).ShouldBe(12);
    }

    [Fact]
    public async Task Two_movements_side_by_side_add_up_to_their_difference()
    {
        var page = await reader.Open(Houses.LongreachPage, 1280);
        await page.ClickAsync($"{Hamstrings} [data-view=compare]");
        var panel = page.Locator($"{Hamstrings} .panel");
        (await panel.Locator(".verdict").TextContentAsync()).ShouldBe("The seated leg curl scores 2.7 points above the one-leg romanian deadlift.");
        var parts = await panel.Locator("tbody .n").AllTextContentsAsync();
        parts.Sum(part => double.Parse(part.Replace('\u2212', '-'), System.Globalization.CultureInfo.InvariantCulture)).ShouldBe(2.7, 0.3);
        (await panel.Locator("tfoot .n").TextContentAsync()).ShouldBe("+2.7");
        await panel.Locator("select").First.SelectOptionAsync(new SelectOptionValue { Label = "Nordic curl" });
        (await panel.Locator(".caution").First.TextContentAsync())!.ShouldContain("First");
    }

    [Fact]
    public async Task A_learner_places_a_movement_and_is_told_the_rule_that_was_forgotten()
    {
        var page = await reader.Open(Houses.LongreachPage, 360);
        await page.ClickAsync($"{Hamstrings} [data-view=guess]");
        var panel = page.Locator($"{Hamstrings} .panel");
        (await page.Locator($"{Hamstrings} .results").IsVisibleAsync()).ShouldBeFalse();
        (await panel.Locator("h3").TextContentAsync()).ShouldBe("Where does the 45-degree hip extension stand?");
        await panel.GetByText("Special cases", new LocatorGetByTextOptions { Exact = true }).ClickAsync();
        await panel.GetByText("stretch", new LocatorGetByTextOptions { Exact = true }).ClickAsync();
        await panel.GetByText("Show what the house says").ClickAsync();
        (await panel.Locator(".answer h4").First.TextContentAsync()).ShouldBe("What the house says: Build on it");
        (await panel.Locator(".answer .placed").TextContentAsync()).ShouldBe("You placed it 4 tiers lower.");
        (await panel.Locator(".answer .missed").TextContentAsync()).ShouldBe("The largest thing you did not name: tension when lengthened, +9.1 points.");
        (await panel.Locator(".answer .trail").GetAttributeAsync("open")).ShouldNotBeNull();
        await panel.GetByText("Next movement").ClickAsync();
        (await panel.Locator("h3").TextContentAsync()).ShouldBe("Where does the ball leg curl stand?");
    }

    [Fact]
    public async Task The_keyboard_alone_finds_a_movement_and_opens_its_card()
    {
        var page = await reader.Open(Houses.LongreachPage, 1280);
        await page.Keyboard.PressAsync("Tab");
        (await page.EvaluateAsync<string>("document.activeElement.className")).ShouldBe("skip");
        for (var i = 0; i < 40 && await page.EvaluateAsync<string>("document.activeElement.id") != "find"; i++)
        {
            await page.Keyboard.PressAsync("Tab");
        }

        await page.Keyboard.TypeAsync("nordic");
        await page.Keyboard.PressAsync("Tab");
        for (var i = 0; i < 6 && await page.EvaluateAsync<string>("document.activeElement.textContent") != "Nordic curl"; i++)
        {
            await page.Keyboard.PressAsync("Tab");
        }

        await page.Keyboard.PressAsync("Enter");
        var verdict = page.Locator(".card[open] .verdict");
        await verdict.WaitForAsync();
        (await verdict.TextContentAsync())!.ShouldContain("lying leg curl");
    }

    [Fact]
    public async Task The_switch_turns_the_light_whatever_the_device_prefers()
    {
        var page = await reader.Open(Houses.LongreachPage, 1280, dark: true);
        (await Paper(page)).ShouldBe("rgb(15, 24, 28)");
        await page.CheckAsync("input[name=theme][value=light]");
        (await Paper(page)).ShouldBe("rgb(251, 250, 247)");
    }

    [Fact]
    public async Task A_movement_named_like_a_script_is_shown_and_not_run()
    {
        var page = await reader.Open(HouseReport.Render(Houses.Hostile()), 1280);
        (await page.Locator(".row h4").AllTextContentsAsync()).ShouldContain(Houses.HostileName);
        await page.FillAsync("#find", "script");
        (await page.Locator("#found a").TextContentAsync()).ShouldBe(Houses.HostileName);
        await page.ClickAsync("[data-view=compare]");
        await page.ClickAsync("[data-view=guess]");
        reader.Complaints.ShouldBeEmpty();
        reader.Requests.ShouldBeEmpty();
    }

    [Fact]
    public async Task On_paper_each_movement_has_a_page_and_each_page_the_edition_and_the_caution()
    {
        var page = await reader.Open(Houses.LongreachPage, 1280);
        var paper = Encoding.Latin1.GetString(await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true }));
        var pages = paper.Split("/Type /Page\n").Length - 1;
        var rankings = Houses.Longreach.Rankings;
        var sheets = rankings.Length + rankings.Sum(ranking => ranking.Placements.Length + ranking.LeftOut.Length);
        pages.ShouldBeGreaterThanOrEqualTo(sheets);
        pages.ShouldBeLessThanOrEqualTo(sheets + 25);
        Houses.LongreachPage.ShouldContain("@bottom-left{content:\"Longreach, version 3.0.0, edition ");
    }

    [Theory]
    [InlineData(1280, false)]
    [InlineData(1280, true)]
    [InlineData(360, false)]
    [InlineData(360, true)]
    public async Task The_accessibility_engine_finds_nothing(int width, bool dark)
    {
        var page = await reader.Open(Houses.OneTarget, width, dark);
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => { part.open = !part.closest('.card') || part.closest('.card').matches('.card:nth-of-type(-n+4)') })");
        await page.CheckAsync("#sore input >> nth=0", new PageCheckOptions { Force = true });
        var found = await page.RunAxe();
        found.Violations.Select(violation => $"{violation.Id}: {violation.Help}: {violation.Nodes[0].Html}").ShouldBeEmpty();
    }

    private static Task<int> Width(IPage page) => page.EvaluateAsync<int>("document.documentElement.scrollWidth");

    private static Task<string> Paper(IPage page) => page.EvaluateAsync<string>("getComputedStyle(document.documentElement).backgroundColor");

    private static async Task<bool> Above(ILocator one, ILocator other) => (await one.BoundingBoxAsync())!.Y < (await other.BoundingBoxAsync())!.Y;
}
