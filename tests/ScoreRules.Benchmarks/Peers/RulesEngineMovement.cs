namespace ScoreRules.Benchmarks.Peers;

/// <summary>A movement as expressions of RulesEngine read it; public, since they are compiled against it.</summary>
public sealed class RulesEngineMovement
{
    /// <summary>Index of the target.</summary>
    public int T { get; init; }

    /// <summary>Values by attribute.</summary>
    public IReadOnlyList<double> N { get; init; } = [];

    /// <summary>Called facts.</summary>
    public IList<bool> F { get; init; } = [];
}
