namespace ScoreRules.Weighting;

/// <summary>How far comparisons contradict one another: consistency index over random index (Saaty 1980).</summary>
/// <param name="Value">0 when they agree; above <see cref="Threshold"/> they contradict one another enough to look again.</param>
/// <param name="Missing">How many pairs are not compared. With pairs missing the table was completed with fitted ratios and the random index made smaller.</param>
public sealed record ConsistencyRatio(double Value, int Missing)
{
    /// <summary>Saaty's customary limit.</summary>
    public const double Threshold = 0.10;

    private const double NoCircle = 1e-9;

    /// <summary>The ratio of comparisons that hang together.</summary>
    /// <param name="count">How many things are compared.</param>
    /// <param name="comparisons">Comparisons that join all of them, one a pair.</param>
    public static ConsistencyRatio Of(int count, IReadOnlyList<PairwiseComparison> comparisons)
    {
        var missing = (count * (count - 1) / 2) - comparisons.Count;
        var random = RandomIndex.Of(count, missing);
        var index = random < NoCircle ? 0 : PairwiseMatrix.Completed(LogLeastSquares.Shares(count, comparisons), comparisons).ConsistencyIndex;
        return new ConsistencyRatio(random < NoCircle ? 0 : index / random, missing);
    }
}
