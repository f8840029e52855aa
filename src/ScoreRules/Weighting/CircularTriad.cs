namespace ScoreRules.Weighting;

/// <summary>Three things, each pair compared, whose comparisons do not go together.</summary>
/// <param name="First">Said to matter more than the second.</param>
/// <param name="Second">Said to matter more than the third.</param>
/// <param name="Third">The last one.</param>
/// <param name="FirstToSecond">How many times the first matters as much as the second, 1 or more.</param>
/// <param name="SecondToThird">How many times the second matters as much as the third, 1 or more.</param>
/// <param name="FirstToThird">How many times the first is said to matter as much as the third.</param>
public sealed record CircularTriad(int First, int Second, int Third, double FirstToSecond, double SecondToThird, double FirstToThird)
{
    /// <summary>What the first two comparisons say about the first and the third.</summary>
    public double Implied => FirstToSecond * SecondToThird;

    /// <summary>How far the third comparison is off, as a factor of 1 or more.</summary>
    public double Factor => Math.Max(Implied / FirstToThird, FirstToThird / Implied);

    /// <summary>The triad that is furthest off; null when no three things have all pairs compared.</summary>
    /// <param name="count">How many things there are.</param>
    /// <param name="comparisons">The comparisons, one a pair.</param>
    public static CircularTriad? Worst(int count, IEnumerable<PairwiseComparison> comparisons)
    {
        var ratio = new double[count, count];
        foreach (var (first, second, times) in comparisons)
        {
            ratio[first, second] = times;
            ratio[second, first] = 1 / times;
        }

        var triads = from first in Enumerable.Range(0, count)
                     from second in Enumerable.Range(0, count)
                     where first != second && ratio[first, second] >= 1
                     from third in Enumerable.Range(0, count)
                     where third != first && third != second && ratio[second, third] >= 1 && ratio[first, third] > 0
                     select new CircularTriad(first, second, third, ratio[first, second], ratio[second, third], ratio[first, third]);
        return triads.MaxBy(triad => Math.Round(triad.Factor, 9));
    }
}
