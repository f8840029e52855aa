using System.Diagnostics;
using ScoreRules.Benchmarks.Peers;
using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Paired;

/// <summary>
/// Gives the same work to all peers: proves first that all answer the same, warms them up, then lets them take turns, so
/// that a slow moment of the machine hits all of them.
/// </summary>
/// <param name="peers">The peers, the floor first.</param>
internal sealed class PairedRunner(IReadOnlyList<IPeer> peers)
{
    private const int OutsideRounds = 3;
    private const double WarmUpMilliseconds = 1500;
    private const double InsideBudgetMilliseconds = 4000;

    /// <summary>All peers on one workload.</summary>
    public IReadOnlyList<Cell> Run(RuleBase rules, Rows rows)
    {
        var ready = peers.Select(peer => peer.Missing is null && rows.Count <= peer.LargestCatalogue ? peer.Prepare(rules, rows) : null).ToList();
        Compare(ready);
        var inside = ready.Where((_, index) => !peers[index].IsOutside).OfType<Func<PeerRun>>().ToList();
        var rounds = RoundsAfterWarmUp(inside);
        var times = ready.Select(_ => new List<double>()).ToList();
        for (var round = 0; round < rounds; round++)
        {
            Round(ready, times, index => !peers[index].IsOutside || round < OutsideRounds);
        }

        return [.. times.Select(own => Summary(own, times[0]))];
    }

    private void Compare(List<Func<PeerRun>?> ready)
    {
        var expected = ready[0]!().PeerAnswers;
        for (var i = 1; i < ready.Count; i++)
        {
            if (ready[i]?.Invoke().PeerAnswers.DifferenceFrom(expected) is { } difference)
            {
                throw new InvalidOperationException($"{peers[i].Name} does not answer as {peers[0].Name} does: {difference}.");
            }
        }
    }

    private static int RoundsAfterWarmUp(List<Func<PeerRun>> inside)
    {
        var start = Stopwatch.GetTimestamp();
        var perRound = 0.0;
        do
        {
            perRound = inside.Sum(run => run().Milliseconds);
        }
        while (Stopwatch.GetElapsedTime(start).TotalMilliseconds < WarmUpMilliseconds);

        return (int)Math.Clamp(InsideBudgetMilliseconds / perRound, 5, 300);
    }

    private static void Round(List<Func<PeerRun>?> ready, List<List<double>> times, Predicate<int> takesPart)
    {
        for (var i = 0; i < ready.Count; i++)
        {
            if (ready[i] is { } run && takesPart(i))
            {
                times[i].Add(run().Milliseconds);
            }
        }
    }

    private static Cell Summary(List<double> own, List<double> floor) =>
        own.Count == 0 ? Cell.NotRun : new Cell(Cell.Median(own), Cell.Median(own.Zip(floor, (time, least) => time / least)));
}
