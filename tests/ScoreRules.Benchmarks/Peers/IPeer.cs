using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>Something that can apply the generated rules. What it needs before the first movement is not timed.</summary>
internal interface IPeer
{
    /// <summary>Its name in the table.</summary>
    string Name { get; }

    /// <summary>The largest catalogue it is given; larger ones would take minutes and only repeat its rate.</summary>
    int LargestCatalogue { get; }

    /// <summary>Whether it runs in another process and times itself; such a peer gets fewer rounds.</summary>
    bool IsOutside { get; }

    /// <summary>Why it cannot run here, or null.</summary>
    string? Missing { get; }

    /// <summary>Makes it ready for some rules and movements.</summary>
    Func<PeerRun> Prepare(RuleBase rules, Rows rows);
}
