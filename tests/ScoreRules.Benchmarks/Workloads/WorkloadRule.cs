using System.Collections.Immutable;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>A generated rule: (all or any of the tests), and one more where given, unless another holds, for one target or all.</summary>
/// <param name="Name">Its name in rule text.</param>
/// <param name="Kind">What it does.</param>
/// <param name="Level">Steps of chaining below it: a rule names facts of lower levels only.</param>
/// <param name="Fact">For a call: index of the fact it makes; else -1.</param>
/// <param name="Points">For give and take: points, negative when taken; else 0.</param>
internal sealed record WorkloadRule(string Name, RuleKind Kind, int Level, int Fact, double Points)
{
    /// <summary>The first line of the condition.</summary>
    public ImmutableArray<WorkloadTest> Tests { get; init; } = [];

    /// <summary>Whether one of the tests is enough.</summary>
    public bool IsAny { get; init; }

    /// <summary>Something that must hold too, or null.</summary>
    public WorkloadTest? Also { get; init; }

    /// <summary>Something that must not hold, or null.</summary>
    public WorkloadTest? Unless { get; init; }

    /// <summary>The only target it is for, or -1 for every target.</summary>
    public int OnlyTarget { get; init; } = -1;
}
