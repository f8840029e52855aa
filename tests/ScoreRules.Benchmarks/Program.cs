using ScoreRules.Benchmarks.Own;
using ScoreRules.Benchmarks.Paired;

return args switch
{
    ["own"] => Own(false),
    ["own", "statistics"] => Own(true),
    ["peers"] => Peers(),
    ["cold", .. var tools] => Cold(tools),
    ["all"] => Peers() + Own(false) + Cold([]),
    _ => Usage(),
};

static int Own(bool statisticsOnly)
{
    OwnParts.Run(statisticsOnly);
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
    Console.Error.WriteLine("Say what to measure: own (our parts, BenchmarkDotNet; own statistics: those alone), peers (the same work done by others), cold (the tool as a process) or all.");
    return 2;
}
