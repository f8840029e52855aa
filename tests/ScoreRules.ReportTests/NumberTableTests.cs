using System.Globalization;
using Microsoft.Playwright;
using ScoreRules.Report;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>The table of numbers: readable as it stands, sortable where scripts run.</summary>
public sealed class NumberTableTests(ReaderBrowser reader) : IClassFixture<ReaderBrowser>
{
    private const string Table = ".target[data-name=hamstrings] .table";

    [Fact]
    public async Task A_column_head_sorts_and_a_second_press_turns_the_order_round()
    {
        var page = await Open(1280);
        (await Sorted(page)).ShouldBe("No. ascending");
        var ranked = await Column(page, 2);
        await page.ClickAsync($"{Table} th >> text=Points");
        (await Sorted(page)).ShouldBe("Points descending");
        var points = (await Column(page, 4)).Select(Number).ToList();
        points.ShouldBe(points.OrderDescending());
        await page.ClickAsync($"{Table} th >> text=Points");
        (await Sorted(page)).ShouldBe("Points ascending");
        (await Column(page, 4)).Select(Number).ShouldBe(points.Order());
        await page.ClickAsync($"{Table} th >> text=No.");
        (await Column(page, 2)).ShouldBe(ranked);
    }

    [Fact]
    public async Task Names_sort_by_the_alphabet_and_tiers_by_their_order_in_the_house()
    {
        var page = await Open(1280);
        await page.ClickAsync($"{Table} th >> text=Movement");
        var names = await Column(page, 2);
        names.ShouldBe(names.Order(StringComparer.OrdinalIgnoreCase));
        names[0].ShouldBe("45-degree hip extension");
        await page.ClickAsync($"{Table} th >> text=Tier");
        await page.ClickAsync($"{Table} th >> text=Tier");
        (await Sorted(page)).ShouldBe("Tier descending");
        string[] worstFirst = ["Special cases", "Second string", "Level with the benchmark", "Strong pick", "Build on it"];
        var tiers = (await Column(page, 3)).Distinct().ToList();
        tiers.ShouldBe(worstFirst.Where(tiers.Contains));
    }

    [Fact]
    public async Task What_has_no_number_stays_last_either_way()
    {
        var page = await Open(1280);
        for (var press = 0; press < 2; press++)
        {
            await page.ClickAsync($"{Table} th >> text=Lands here");
            (await Column(page, 7))[^1].ShouldBe("\u2013");
            (await Column(page, 2))[^1].ShouldBe("Lying leg curl");
        }
    }

    [Fact]
    public async Task The_keyboard_sorts_too()
    {
        var page = await Open(360);
        await page.FocusAsync($"{Table} th:has-text('8 tries in 10') button");
        await page.Keyboard.PressAsync("Enter");
        (await Sorted(page)).ShouldBe("8 tries in 10 descending");
        var low = (await Column(page, 6)).Where(span => span != "\u2013").Select(span => Number(span.Split(" to ")[0])).ToList();
        low.ShouldBe(low.OrderDescending());
        reader.Complaints.ShouldBeEmpty();
    }

    [Fact]
    public async Task Without_scripts_the_table_stays_as_it_is()
    {
        var page = await Open(360, scripts: false);
        (await page.Locator($"{Table} button").CountAsync()).ShouldBe(0);
        (await page.Locator($"{Table} .sorting").IsVisibleAsync()).ShouldBeFalse();
        (await Column(page, 1))[0].ShouldBe("1");
    }

    [Fact]
    public void Without_tries_the_table_has_no_columns_for_them()
    {
        HouseReport.Render(Houses.Longreach).ShouldNotContain("Lands here, of 100");
        Houses.LongreachPage.ShouldContain("Lands here, of 100");
    }

    private async Task<IPage> Open(int width, bool scripts = true)
    {
        var page = await reader.Open(Houses.LongreachPage, width, scripts: scripts);
        await page.ClickAsync($"{Table} summary");
        return page;
    }

    private static async Task<IReadOnlyList<string>> Column(IPage page, int number) =>
        [.. (await page.Locator($"{Table} tbody tr > :nth-child({number.ToString(CultureInfo.InvariantCulture)})").AllTextContentsAsync()).Select(text => text.Trim())];

    private static async Task<string> Sorted(IPage page)
    {
        var head = page.Locator($"{Table} th[aria-sort]");
        (await head.CountAsync()).ShouldBe(1);
        return $"{await head.TextContentAsync()} {await head.GetAttributeAsync("aria-sort")}";
    }

    private static double Number(string text) => double.Parse(text.Replace('\u2212', '-'), CultureInfo.InvariantCulture);
}
