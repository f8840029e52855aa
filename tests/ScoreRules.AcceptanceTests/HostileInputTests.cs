using System.Diagnostics;
using System.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

/// <summary>
/// Input that no coach would write: each ends in a documented exit code and bounded output, never in a stack trace.
/// (The time it takes is measured, not tested.)
/// </summary>
public sealed class HostileInputTests
{
    private const int MostOutput = 100_000;

    public static TheoryData<string, string> Texts() => new()
    {
        { "a megabyte of rule text", string.Concat(Enumerable.Repeat("call a\n  when b is at least 3\n\n", 33_000)) },
        { "a megabyte of nonsense", string.Concat(Enumerable.Repeat("lorem < ipsum ( 2,5 \"dolor\n", 38_000)) },
        { "3,000 nested brackets", "call a\n  when " + new string('(', 3000) + "b" + new string(')', 3000) + "\n" },
        { "20,000 unless lines", "call a\n  when b\n" + string.Concat(Enumerable.Repeat("  unless b\n", 20_000)) },
        { "a name of two megabytes", "criterion " + new string('a', 2_000_000) + "\n" },
        { "a name of 700,000 words", "criterion " + string.Concat(Enumerable.Repeat("ab ", 700_000)) + "\n" },
        { "a list of 200,000 names", "call a\n  when b is one of " + string.Join(", ", Enumerable.Range(0, 200_000).Select(i => $"n{i}")) + "\n" },
        { "100,000 demands on one line", "call a\n  when b" + string.Concat(Enumerable.Repeat(" and b", 100_000)) + "\n" },
        { "half a million quotes", new string('"', 500_000) },
        { "a circle of 5,000 calls", string.Concat(Enumerable.Range(0, 5000).Select(i => $"call c{i}\n  when c{(i + 1) % 5000}\n\n")) },
        { "50,000 declarations of one name", string.Concat(Enumerable.Repeat("criterion x\n\n", 50_000)) },
        { "NUL characters", "criterion a\0b\n  counts\0 3\n" },
        { "right-to-left marks", "criterion a\u202Eb\n  counts \u200F3\n" },
        { "numbers too large", "criterion a\n  counts 1e309\n  reads " + new string('9', 400) + "\n" },
        { "nothing but line ends", new string('\n', 500_000) },
        { "carriage returns only", "criterion a\r  counts 3\r" },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void Hostile_text_gets_messages_or_a_normal_result(string what, string text)
    {
        using var house = new TemporaryHouse(text);
        ShouldBeCivil(Run(house.Path, "check", "."), what, 0, 1);
    }

    [Fact]
    public void Bytes_that_are_not_utf8_are_reported_with_their_place()
    {
        using var house = new TemporaryHouse("");
        File.WriteAllBytes(Path.Combine(house.Path, "house.rules"), [.. Encoding.UTF8.GetBytes("criterion a\n  counts "), 0xFF, 0xFE, .. Encoding.UTF8.GetBytes("3\n")]);
        var outcome = Run(house.Path, "check", ".", "--format", "short");
        ShouldBeCivil(outcome, "invalid UTF-8", 1);
        outcome.Output.ShouldContain("house.rules:2:10: error SR0001");
    }

    [Fact]
    public void A_lone_surrogate_is_reported()
    {
        using var house = new TemporaryHouse("");
        File.WriteAllBytes(Path.Combine(house.Path, "house.rules"), [.. Encoding.UTF8.GetBytes("criterion a"), 0xED, 0xA0, 0x80, (byte)'\n']);
        var outcome = Run(house.Path, "check", ".");
        ShouldBeCivil(outcome, "a lone surrogate", 1);
        outcome.Output.ShouldContain("SR0001");
    }

    [Fact]
    public void A_spreadsheet_line_of_200_megabytes_is_refused_with_a_message()
    {
        using var house = new TemporaryHouse("note a house\n");
        using (var sheet = new StreamWriter(Path.Combine(house.Path, "movements.csv")))
        {
            sheet.Write("movement;");
            var block = new string('x', 1_000_000);
            for (var i = 0; i < 200; i++)
            {
                sheet.Write(block);
            }
        }

        ShouldBeCivil(Run(house.Path, "check", "."), "a line of 200 MB", 1);
    }

    [Fact]
    public void A_folder_where_a_file_belongs_is_named()
    {
        using var house = new TemporaryHouse("note a house\n");
        Directory.CreateDirectory(Path.Combine(house.Path, "more.rules"));
        var outcome = Run(house.Path, "check", ".");
        ShouldBeCivil(outcome, "a folder for a file", 1);
        outcome.Output.ShouldContain("\"more.rules\" is a folder, and a file of rule text was expected");
    }

    [Fact]
    public void A_reader_that_goes_away_is_no_fault()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var start = new ProcessStartInfo("bash") { WorkingDirectory = Tool.Root, RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add($"set -o pipefail; dotnet '{Path.Combine(AppContext.BaseDirectory, "ScoreRules.Cli.dll")}' rank rulesets/longreach --format json | head -c 10; exit ${{PIPESTATUS[0]}}");
        using var process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd().Length.ShouldBe(10);
        process.StandardError.ReadToEnd().ShouldBeEmpty();
        process.WaitForExit();
        process.ExitCode.ShouldBe(0);
    }

    [Fact]
    public void An_interrupt_ends_with_130()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var start = new ProcessStartInfo("bash") { WorkingDirectory = Tool.Root, RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add($"set -m; sleep 30 2>/dev/null | dotnet '{Path.Combine(AppContext.BaseDirectory, "ScoreRules.Cli.dll")}' check - & sleep 3; kill -INT $!; wait $!; echo $?");
        using var process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd().Trim().ShouldBe("130");
        process.StandardError.ReadToEnd().ShouldNotContain("   at ");
        process.WaitForExit();
    }

    private static Tool.Outcome Run(string folder, params string[] arguments) => Tool.RunIn(folder, "", arguments);

    private static void ShouldBeCivil(Tool.Outcome outcome, string what, params int[] codes)
    {
        codes.ShouldContain(outcome.ExitCode, $"{what}: {outcome.Errors}");
        (outcome.Output.Length + outcome.Errors.Length).ShouldBeLessThan(MostOutput, what);
        (outcome.Output + outcome.Errors).ShouldNotContain("   at ", Case.Sensitive, what);
        outcome.Errors.ShouldNotContain("Something went wrong inside");
    }
}
