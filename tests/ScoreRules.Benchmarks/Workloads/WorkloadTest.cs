namespace ScoreRules.Benchmarks.Workloads;

/// <summary>One demand of a generated condition.</summary>
/// <param name="Kind">How it compares.</param>
/// <param name="Subject">Index of the attribute, or of the called fact.</param>
/// <param name="Value">What it is compared with; 0 for a called fact.</param>
internal sealed record WorkloadTest(TestKind Kind, int Subject, double Value);
