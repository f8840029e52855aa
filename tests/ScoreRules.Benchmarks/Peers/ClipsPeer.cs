using System.Globalization;
using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>CLIPS as Debian ships it: one fact for each movement, forward chaining by a Rete network. It times loading the facts and running.</summary>
internal sealed class ClipsPeer : IPeer
{
    /// <inheritdoc/>
    public string Name => "CLIPS (Debian)";

    /// <inheritdoc/>
    public int LargestCatalogue => 10_000;

    /// <inheritdoc/>
    public bool IsOutside => true;

    /// <inheritdoc/>
    public string? Missing { get; } = File.Exists("/usr/bin/clips") ? null : "needs the Debian package clips";

    /// <inheritdoc/>
    public Func<PeerRun> Prepare(RuleBase rules, Rows rows)
    {
        var folder = Directory.CreateTempSubdirectory("clips").FullName;
        var score = new ColumnarScore(rules, rows);
        File.WriteAllText(Path.Combine(folder, "run.clp"), ClipsText.Write(rules));
        File.WriteAllText(Path.Combine(folder, "facts.clp"), ClipsText.Facts(rows));
        return () =>
        {
            OutsideProcess.Run("clips", folder, "-f2", "run.clp");
            var lines = File.ReadAllLines(Path.Combine(folder, "held.txt"));
            var held = Held(lines.Skip(1), rules.Rules.Length, rows.Count);
            return new PeerRun(1000 * double.Parse(lines[0], CultureInfo.InvariantCulture), new PeerAnswers(held, score.Run(held)));
        };
    }

    private static ulong[][] Held(IEnumerable<string> lines, int ruleCount, int rowCount)
    {
        var held = Enumerable.Range(0, ruleCount).Select(_ => new ulong[(rowCount + 63) / 64]).ToArray();
        foreach (var line in lines)
        {
            var blank = line.IndexOf(' ', StringComparison.Ordinal);
            var row = int.Parse(line.AsSpan(blank + 1), CultureInfo.InvariantCulture);
            held[int.Parse(line.AsSpan(0, blank), CultureInfo.InvariantCulture)][row >> 6] |= 1UL << row;
        }

        return held;
    }
}
