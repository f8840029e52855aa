using System.Diagnostics;
using System.Text;

namespace ScoreRules.AcceptanceTests;

/// <summary>Runs the tool as a real process.</summary>
internal static class Tool
{
    public static string Root { get; } = FindRoot();

    public static Outcome Run(params string[] arguments) => RunIn(Root, "", arguments);

    public static Outcome RunIn(string folder, string input, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "ScoreRules.Cli.dll"));
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Outcome(process.ExitCode, output, errors.GetAwaiter().GetResult());
    }

    private static string FindRoot()
    {
        var at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "ScoreRules.sln")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new InvalidOperationException("The tests run outside the repository.");
    }

    internal sealed record Outcome(int ExitCode, string Output, string Errors);
}
