using System.Diagnostics;
using ScoreRules.Houses;

namespace ScoreRules.Cli.Files;

/// <summary>Prints a page by the Chromium that is on the machine.</summary>
internal static class Chromium
{
    private const string Variable = "SCORERULES_CHROMIUM";
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);
    private static readonly string[] Names = ["chromium", "chromium-browser", "chromium.exe"];

    /// <summary>Prints a web page to a PDF file.</summary>
    /// <exception cref="HouseException">There is no Chromium, or it did not print.</exception>
    public static void Print(string page, string pdf)
    {
        var browser = Find() ?? throw new HouseException($"No Chromium was found, so \"{pdf}\" was not made; \"{page}\" was. Install Chromium (on Debian: apt-get install chromium), or name the program in {Variable}, or open the page and print it.");
        WholeFile.Put(pdf, beside => Run(browser, page, beside));
    }

    private static string? Find()
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        var named = Environment.GetEnvironmentVariable(Variable);
        return string.IsNullOrEmpty(named) ? folders.SelectMany(folder => Names.Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists) : File.Exists(named) ? named : null;
    }

    private static void Run(string browser, string page, string pdf)
    {
        var own = Directory.CreateTempSubdirectory("scorerules").FullName;
        try
        {
            using var process = Start(browser, page, pdf, own);
            var said = process.StandardError.ReadToEndAsync();
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
                throw new HouseException($"Chromium did not finish printing \"{page}\" within {Patience.TotalMinutes:0} minutes.");
            }

            if (process.ExitCode != 0 || !File.Exists(pdf))
            {
                throw new HouseException($"Chromium could not print \"{page}\": {said.GetAwaiter().GetResult().Trim().Split('\n')[^1]}");
            }
        }
        finally
        {
            Directory.Delete(own, recursive: true);
        }
    }

    private static Process Start(string browser, string page, string pdf, string own)
    {
        var start = new ProcessStartInfo(browser) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true };
        string[] arguments =
        [
            "--headless", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run",
            $"--user-data-dir={own}", "--no-pdf-header-footer", $"--print-to-pdf={pdf}", new Uri(Path.GetFullPath(page)).AbsoluteUri,
        ];

        // Chromium refuses its sandbox to the superuser; the page is our own and may load nothing.
        foreach (var argument in Environment.UserName == "root" ? ["--no-sandbox", .. arguments] : arguments)
        {
            start.ArgumentList.Add(argument);
        }

        return Process.Start(start) ?? throw new HouseException($"\"{browser}\" did not start.");
    }
}
