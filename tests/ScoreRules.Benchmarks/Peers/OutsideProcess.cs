using System.ComponentModel;
using System.Diagnostics;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>Programs that may or may not be there.</summary>
internal static class OutsideProcess
{
    /// <summary>Runs a program to its end and gives what it printed.</summary>
    public static string Run(string program, string folder, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, UseShellExecute = false })!;
        var printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? printed : throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} failed: {printed}");
    }

    /// <summary>Whether a program can be started.</summary>
    public static bool Exists(string program, params string[] arguments)
    {
        try
        {
            Run(program, ".", arguments);
            return true;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }

    /// <summary>A folder of this project in the repository.</summary>
    public static string FolderOf(params string[] parts)
    {
        var at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "ScoreRules.sln")))
        {
            at = Path.GetDirectoryName(at);
        }

        return Path.Combine([at ?? throw new InvalidOperationException("The benchmarks run outside the repository."), .. parts]);
    }
}
