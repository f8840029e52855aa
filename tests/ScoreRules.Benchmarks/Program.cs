using BenchmarkDotNet.Running;
using ScoreRules.Benchmarks.Own;
using ScoreRules.Benchmarks.Paired;

return args switch
{
    ["own"] => Own(),
    ["peers"] => Peers(),
    _ => Usage(),
};

static int Own()
{
    BenchmarkSwitcher.FromTypes([typeof(JudgingBenchmarks), typeof(ReadingBenchmarks)]).RunAllJoined();
    return 0;
}

static int Peers()
{
    PeerTable.Print(Console.Out);
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("Say what to measure: own (our parts, BenchmarkDotNet) or peers (the same work done by others).");
    return 2;
}
