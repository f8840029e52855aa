using System.Collections.Immutable;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>Generated rules and what they speak about.</summary>
/// <param name="Attributes">The attributes.</param>
/// <param name="Criteria">The criteria, by name.</param>
/// <param name="Rules">The rules, those of lower levels first.</param>
/// <param name="FactCount">How many called facts there are.</param>
internal sealed record RuleBase(
    ImmutableArray<WorkloadAttribute> Attributes,
    ImmutableArray<WorkloadCriterion> Criteria,
    ImmutableArray<WorkloadRule> Rules,
    int FactCount)
{
    /// <summary>How many targets there are; every movement trains one of them.</summary>
    public const int TargetCount = 4;

    /// <summary>Name of a called fact.</summary>
    public static string FactName(int fact) => $"fact-{Letters(fact)}";

    /// <summary>Name of a target.</summary>
    public static string TargetName(int target) => $"target-{Letters(target)}";

    /// <summary>Name of a movement of a target; names rise with the number. Number 0 is the target's benchmark.</summary>
    public static string MovementName(int target, int number) => FormattableString.Invariant($"movement-{Letters(target)}-{number:D7}");

    /// <summary>Two letters for a number below 676.</summary>
    public static string Letters(int number) => $"{(char)('a' + (number / 26))}{(char)('a' + (number % 26))}";
}
