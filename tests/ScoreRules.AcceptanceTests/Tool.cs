using System.Diagnostics;
using System.Text;

namespace ScoreRules.AcceptanceTests;

/// <summary>Runs the tool as a real process.</summary>
internal static class Tool
{
    public static string Root { get; } = FindRoot();

    public static Outcome Run(params string[] arguments) => RunIn(Root, "", arguments);

    public static Outcome RunIn(string folder, string input, params string[] arguments) => RunIn(folder, input, [], arguments);

    /// <summary>Runs it with variables of its environment set.</summary>
    public static Outcome RunIn(string folder, string input, KeyValuePair<string, string>[] environment, params string[] arguments)
    {
        var start = Start("dotnet", folder);
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        foreach (var argument in arguments.Prepend(Program))
        {
            start.ArgumentList.Add(argument);
        }

        return Finish(start, input);
    }

    /// <summary>Runs it under a shell that lets no file grow beyond so many kilobytes.</summary>
    public static Outcome Limited(int kilobytes, params string[] arguments)
    {
        var start = Start("bash", Root);

        // The run-time's own mapping of code would need larger files otherwise.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        foreach (var argument in (string[])["-c", $"ulimit -c 0; ulimit -f {kilobytes.ToString(System.Globalization.CultureInfo.InvariantCulture)}; exec dotnet \"$0\" \"$@\"", Program, .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        return Finish(start, "");
    }

    private static string Program => Path.Combine(AppContext.BaseDirectory, "ScoreRules.Cli.dll");

    private static ProcessStartInfo Start(string program, string folder) =>
        new(program)
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };

    private static Outcome Finish(ProcessStartInfo start, string input)
    {
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
