using System.Globalization;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>Large type on screen and on paper: everything grows, nothing runs off, and nothing is kept.</summary>
public sealed class LargeTypeTests(ReaderBrowser reader) : IClassFixture<ReaderBrowser>
{
    private const string OpenAll = "document.querySelectorAll('.target details, .kit').forEach(part => { part.open = true })";

    [Theory]
    [InlineData(320)]
    [InlineData(360)]
    [InlineData(768)]
    [InlineData(1280)]
    public async Task Nothing_runs_off_the_side_in_large_type(int width)
    {
        var page = await Large(width);
        await page.EvaluateAsync(OpenAll);
        (await Width(page)).ShouldBeLessThanOrEqualTo(width);
        await page.ClickAsync("[data-view=compare]");
        (await Width(page)).ShouldBeLessThanOrEqualTo(width);
        reader.Complaints.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(320)]
    [InlineData(1280)]
    public async Task No_words_of_a_row_or_a_card_run_over_their_neighbours(int width)
    {
        var page = await Large(width);
        await page.EvaluateAsync(OpenAll);
        var over = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('.row .number, .row .certainty span, .reasons em, .trail ol>li>em, .trail b, .parts em, .ranks')].filter(part => part.scrollWidth > part.clientWidth + 1 && part.clientWidth > 0).map(part => part.className + ': ' + part.textContent)");
        over.ShouldBeEmpty();
    }

    [Fact]
    public async Task Type_grows_by_a_third_and_is_as_before_on_the_next_visit()
    {
        var page = await Large(1280);
        (await Size(page, "html")).ShouldBe("21px");
        (await Size(page, ".row h4")).ShouldBe("21px");
        await page.UncheckAsync("#large");
        (await Size(page, "html")).ShouldBe("16px");
        await page.CheckAsync("#large");
        await page.ReloadAsync();
        (await Size(page, "html")).ShouldBe("16px");
        (await page.IsCheckedAsync("#large")).ShouldBeFalse();
    }

    /// <summary>A4 is 210 mm wide, 28 mm of which are margins: 688 pixels of 1/96 inch.</summary>
    [Fact]
    public async Task On_paper_large_type_is_fifteen_points_and_keeps_to_the_sheet()
    {
        var page = await Large(688);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        (await Size(page, "html")).ShouldBe("20px");
        (await Width(page)).ShouldBeLessThanOrEqualTo(688);
        (await page.Locator(".card .verdict:visible").CountAsync()).ShouldBeGreaterThan(10);
        (await page.Locator("#tools").IsVisibleAsync()).ShouldBeFalse();
    }

    [Fact]
    public async Task Printing_one_list_in_large_type_leaves_the_screen_as_the_reader_set_it()
    {
        var page = await Large(1280);
        await page.EvaluateAsync("window.print = () => { window.printed = 'large' in document.documentElement.dataset }");
        await page.ClickAsync("[data-view=print]");
        (await page.IsCheckedAsync(".panel input >> nth=0")).ShouldBeTrue();
        await page.UncheckAsync(".panel input >> nth=0");
        await page.ClickAsync(".panel .do");
        (await page.EvaluateAsync<bool>("window.printed")).ShouldBeFalse();
        (await Size(page, "html")).ShouldBe("21px");
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task The_accessibility_engine_finds_nothing_in_large_type(int width)
    {
        var page = await Large(width);
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => { part.open = !part.closest('.card') || part.closest('.card').matches('.card:nth-of-type(-n+4)') })");
        var found = await page.RunAxe();
        found.Violations.Select(violation => $"{violation.Id}: {violation.Help}: {violation.Nodes[0].Html}").ShouldBeEmpty();
    }

    private async Task<IPage> Large(int width)
    {
        var page = await reader.Open(Houses.OneTarget, width);
        await page.CheckAsync("#large");
        return page;
    }

    private static Task<int> Width(IPage page) => page.EvaluateAsync<int>("document.documentElement.scrollWidth");

    private static Task<string> Size(IPage page, string selector) => page.EvaluateAsync<string>(string.Create(CultureInfo.InvariantCulture, $"getComputedStyle(document.querySelector('{selector}')).fontSize"));
}
