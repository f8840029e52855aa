using System.Globalization;
using ScoreRules.Benchmarks.Peers;
using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Paired;

/// <summary>Prints the tables of docs/benchmarks.md.</summary>
internal static class PeerTable
{
    private static readonly int[] Catalogues = [1_000, 10_000, 100_000];
    private static readonly int[] RuleBases = [30, 100, 300];

    private static readonly IReadOnlyList<IPeer> Peers =
        [InProcessPeer.Columnar, InProcessPeer.Vector, InProcessPeer.Engine, RulesEnginePeer.Peer, new JsonRulesEnginePeer(), new ClipsPeer()];

    /// <summary>Runs all workloads and prints one table for each number of rules.</summary>
    public static void Print(TextWriter output)
    {
        var runner = new PairedRunner(Peers);
        foreach (var ruleCount in RuleBases)
        {
            var rules = RuleBaseGenerator.Make(ruleCount);
            var columns = Catalogues.Select(count => runner.Run(rules, Rows.Make(rules.Attributes, count))).ToList();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"### {ruleCount} rules"));
            output.WriteLine();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| | {string.Join(" | ", Catalogues.Select(count => count.ToString("N0", CultureInfo.InvariantCulture)))} |"));
            output.WriteLine($"|---|{string.Concat(Catalogues.Select(_ => "---:|"))}");
            for (var i = 0; i < Peers.Count; i++)
            {
                output.WriteLine($"| {Peers[i].Name} | {string.Join(" | ", columns.Select(column => Text(column[i], Peers[i])))} |");
            }

            output.WriteLine();
            output.Flush();
        }
    }

    private static string Text(Cell cell, IPeer peer) => peer.Missing is { } missing ? $"not run: {missing}"
        : double.IsNaN(cell.Milliseconds) ? "-"
        : string.Create(CultureInfo.InvariantCulture, $"{Short(cell.Milliseconds)} ms ({Short(cell.Ratio)}x)");

    private static string Short(double number) => number.ToString(number >= 100 ? "N0" : number >= 10 ? "0" : number >= 1 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
}
