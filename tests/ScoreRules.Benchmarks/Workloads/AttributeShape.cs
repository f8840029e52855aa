namespace ScoreRules.Benchmarks.Workloads;

/// <summary>What values an attribute takes.</summary>
internal enum AttributeShape
{
    /// <summary>Steps from 0 to 4.</summary>
    Rating,

    /// <summary>0 to 99.5 kg in half kilograms.</summary>
    Measure,

    /// <summary>One word of a list; the value is its place in the list.</summary>
    Word,
}
