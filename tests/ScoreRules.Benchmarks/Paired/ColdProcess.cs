using System.Diagnostics;
using System.Globalization;
using ScoreRules.Benchmarks.Peers;

namespace ScoreRules.Benchmarks.Paired;

/// <summary>Times the tool as a process, from start to exit: nothing is warm but the disk.</summary>
internal static class ColdProcess
{
    private const int Rounds = 15;

    /// <summary>Ranks the Longreach house with each of some builds of the tool, in turns, and prints a table.</summary>
    /// <param name="tools">Paths of <c>ScoreRules.Cli.dll</c>; none for the Release build of this repository.</param>
    /// <param name="output">Where the table goes.</param>
    public static void Print(IReadOnlyList<string> tools, TextWriter output)
    {
        var named = tools.Count > 0 ? tools : [OutsideProcess.FolderOf("src", "ScoreRules.Cli", "bin", "Release", "net10.0", "ScoreRules.Cli.dll")];
        var house = OutsideProcess.FolderOf("rulesets", "longreach");
        var times = named.Select(_ => new List<double>()).ToList();
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < named.Count; i++)
            {
                var start = Stopwatch.GetTimestamp();
                OutsideProcess.Run("dotnet", ".", named[i], "rank", house);
                times[i].Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            }
        }

        output.WriteLine("| build | median | least |");
        output.WriteLine("|---|---:|---:|");
        for (var i = 0; i < named.Count; i++)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {named[i]} | {Cell.Median(times[i]):0} ms | {times[i].Min():0} ms |"));
        }
    }
}
