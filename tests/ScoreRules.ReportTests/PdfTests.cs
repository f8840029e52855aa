using System.Diagnostics;
using System.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>The command prints by the machine's own Chromium.</summary>
public sealed class PdfTests
{
    [Fact]
    public void The_page_is_printed_with_the_edition_on_it()
    {
        Assert.SkipWhen(ReaderBrowser.Program is null, "No Chromium was found: install it (on Debian: apt-get install chromium) or name it in SCORERULES_CHROMIUM.");
        var folder = Directory.CreateTempSubdirectory("scorerules").FullName;
        try
        {
            var (code, said) = Run(ReaderBrowser.Program, folder);
            code.ShouldBe(0, said);
            var paper = File.ReadAllBytes(Path.Combine(folder, "house.pdf"));
            Encoding.Latin1.GetString(paper[..5]).ShouldBe("%PDF-");
            Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal).ShouldBe(["house.html", "house.pdf"]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Without_Chromium_the_page_is_kept_and_the_message_says_how_to_get_it()
    {
        var folder = Directory.CreateTempSubdirectory("scorerules").FullName;
        try
        {
            var (code, said) = Run("/nowhere/chromium", folder);
            code.ShouldBe(2);
            said.ShouldContain("No Chromium was found");
            said.ShouldContain("apt-get install chromium");
            Directory.GetFiles(folder).Select(Path.GetFileName).ShouldBe(["house.html"]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (int Code, string Said) Run(string? chromium, string folder)
    {
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = Houses.Root, UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true };
        string[] arguments = [Path.Combine(AppContext.BaseDirectory, "ScoreRules.Cli.dll"), "report", "rulesets/linden-court", "--out", Path.Combine(folder, "house.html"), "--pdf", Path.Combine(folder, "house.pdf")];
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["SCORERULES_CHROMIUM"] = chromium;
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, errors + output.GetAwaiter().GetResult());
    }
}
