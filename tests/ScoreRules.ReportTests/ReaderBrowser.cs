using Microsoft.Playwright;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>A real Chromium with the network cut off, and the pages it reads from files. Without one, its tests are skipped with a line that says how to get it.</summary>
public sealed class ReaderBrowser : IAsyncLifetime
{
    private static readonly string[] Known = ["/usr/bin/chromium", "/usr/bin/chromium-browser"];
    private readonly string folder = Directory.CreateTempSubdirectory("scorerules").FullName;
    private IPlaywright? driver;
    private IBrowser? browser;

    /// <summary>Every request that a page made for anything but itself.</summary>
    public List<string> Requests { get; } = [];

    /// <summary>Every error of a script, and every refusal of the page's policy.</summary>
    public List<string> Complaints { get; } = [];

    public static string? Program => Environment.GetEnvironmentVariable("SCORERULES_CHROMIUM") is { Length: > 0 } named ? named : Known.FirstOrDefault(File.Exists);

    public async ValueTask InitializeAsync()
    {
        if (Program is not { } program)
        {
            return;
        }

        driver = await Playwright.CreateAsync();
        browser = await driver.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = program, Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"] });
    }

    /// <summary>Opens a page of so many pixels' width.</summary>
    public async Task<IPage> Open(string html, int width, bool dark = false, bool scripts = true)
    {
        Assert.SkipWhen(browser is null, "No Chromium was found: install it (on Debian: apt-get install chromium) or name it in SCORERULES_CHROMIUM.");
        var path = Path.Combine(folder, $"{html.GetHashCode(StringComparison.Ordinal):x}.html");
        await File.WriteAllTextAsync(path, html, TestContext.Current.CancellationToken);
        var context = await browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = 900 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            JavaScriptEnabled = scripts,
            Offline = true,
        });
        var page = await context.NewPageAsync();
        var own = new Uri(path).AbsoluteUri;
        page.Request += (_, request) => { if (request.Url != own && !request.Url.StartsWith(own + "#", StringComparison.Ordinal)) { Requests.Add(request.Url); } };
        page.PageError += (_, error) => Complaints.Add(error);
        page.Console += (_, message) => { if (message.Type == "error") { Complaints.Add(message.Text); } };
        page.Dialog += (_, dialog) => Complaints.Add($"a dialog opened: {dialog.Message}");
        await page.GotoAsync(own);
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        driver?.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
