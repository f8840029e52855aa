namespace ScoreRules.Benchmarks.Workloads;

/// <summary>What a generated rule does.</summary>
internal enum RuleKind
{
    /// <summary>It makes a called fact.</summary>
    Call,

    /// <summary>It gives points.</summary>
    Give,

    /// <summary>It takes points.</summary>
    Take,

    /// <summary>It caps the tier.</summary>
    Cap,

    /// <summary>It leaves movements out.</summary>
    LeaveOut,
}
