namespace ScoreRules.Benchmarks.Workloads;

/// <summary>How a generated condition compares.</summary>
internal enum TestKind
{
    /// <summary>The attribute is at least the value.</summary>
    AtLeast,

    /// <summary>The attribute is at most the value.</summary>
    AtMost,

    /// <summary>The attribute is the value or the word.</summary>
    Is,

    /// <summary>The attribute is another word.</summary>
    OtherThan,

    /// <summary>The called fact holds.</summary>
    Called,
}
