using ScoreRules.Benchmarks.Own;
using ScoreRules.Benchmarks.Paired;

return args switch
{
    ["own"] => Own(OwnParts.All),
    ["reading"] => Own(typeof(ReadingBenchmarks)),
    ["mechanics"] => Own(typeof(MechanicsBenchmarks)),
    ["statistics"] => Own(typeof(StatisticsBenchmarks)),
    ["guard"] => Own(typeof(GuardingBenchmarks)),
    ["evidence"] => Own(typeof(EvidenceBenchmarks)),
    ["peers"] => Peers(),
    ["cold", .. var tools] => Cold(tools),
    ["all"] => Peers() + Own(OwnParts.All) + Cold([]),
    _ => Usage(),
};

static int Own(params Type[] benchmarks)
{
    OwnParts.Run(benchmarks);
    return 0;
}

static int Peers()
{
    PeerTable.Print(Console.Out);
    return 0;
}

static int Cold(string[] tools)
{
    ColdProcess.Print(tools, Console.Out);
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("Say what to measure: own (our parts, BenchmarkDotNet), reading, mechanics, statistics, guard or evidence (those of one alone), peers (the same work done by others), cold (the tool as a process) or all.");
    return 2;
}
