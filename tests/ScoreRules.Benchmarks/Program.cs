using ScoreRules.Benchmarks.Paired;

return args switch
{
    ["peers"] => Peers(),
    _ => Usage(),
};

static int Peers()
{
    PeerTable.Print(Console.Out);
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("Say what to measure: own, peers, cold or all.");
    return 2;
}
