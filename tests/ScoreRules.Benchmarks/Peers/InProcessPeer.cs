using System.Diagnostics;
using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>A peer that is a loop or library in this process, timed from outside.</summary>
/// <param name="Name">Its name in the table.</param>
/// <param name="LargestCatalogue">The largest catalogue it is given.</param>
/// <param name="Make">Makes it ready; the result does one pass and gives a way to read its answers, which is not timed.</param>
internal sealed record InProcessPeer(string Name, int LargestCatalogue, Func<RuleBase, Rows, Func<Func<PeerAnswers>>> Make) : IPeer
{
    /// <inheritdoc/>
    public bool IsOutside => false;

    /// <inheritdoc/>
    public string? Missing => null;

    /// <summary>The floor.</summary>
    public static InProcessPeer Columnar { get; } = new("plain columnar loop", int.MaxValue, (rules, rows) =>
    {
        var loop = new ColumnarLoop(rules, rows);
        return () => Ready(loop.Run());
    });

    /// <summary>The stricter floor.</summary>
    public static InProcessPeer Vector { get; } = new("columnar loop, vectorised", int.MaxValue, (rules, rows) =>
    {
        var loop = new VectorLoop(rules, rows);
        return () => Ready(loop.Run());
    });

    /// <summary>Our engine.</summary>
    public static InProcessPeer Engine { get; } = new("ScoreRules", int.MaxValue, (rules, rows) =>
    {
        var engine = new EngineRun(rules, rows);
        return () =>
        {
            var (inferred, scores) = engine.Run();
            return () => engine.PeerAnswers(inferred, scores);
        };
    });

    /// <inheritdoc/>
    public Func<PeerRun> Prepare(RuleBase rules, Rows rows)
    {
        var pass = Make(rules, rows);
        return () =>
        {
            var start = Stopwatch.GetTimestamp();
            var answers = pass();
            var elapsed = Stopwatch.GetElapsedTime(start);
            return new PeerRun(elapsed.TotalMilliseconds, answers());
        };
    }

    private static Func<PeerAnswers> Ready(PeerAnswers answers) => () => answers;
}
