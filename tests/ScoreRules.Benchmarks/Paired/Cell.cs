namespace ScoreRules.Benchmarks.Paired;

/// <summary>What a peer needed for one workload.</summary>
/// <param name="Milliseconds">Median over all rounds; NaN when it was not run.</param>
/// <param name="Ratio">Median over all rounds of its time by that of the plain columnar loop in the same round.</param>
internal sealed record Cell(double Milliseconds, double Ratio)
{
    /// <summary>Not run.</summary>
    public static Cell NotRun { get; } = new(double.NaN, double.NaN);

    /// <summary>The median of some numbers.</summary>
    public static double Median(IEnumerable<double> numbers)
    {
        var sorted = numbers.Order().ToList();
        return sorted[sorted.Count / 2];
    }
}
