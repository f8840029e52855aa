namespace ScoreRules.Weighting;

/// <summary>
/// The mean consistency index of random tables, against which one's own is measured. The table is that of Alonso and Lamata
/// 2006 (International Journal of Uncertainty, Fuzziness and Knowledge-Based Systems 14:445), from 100,000 random tables of each size.
/// </summary>
public static class RandomIndex
{
    private const int Largest = 15;

    private static readonly double[] FromThree = [0.5247, 0.8816, 1.1086, 1.2479, 1.3417, 1.4057, 1.4499, 1.4854, 1.514, 1.5365, 1.5551, 1.5713, 1.5838];

    /// <summary>What messages call the table.</summary>
    public static string Name => "random index of Alonso and Lamata 2006";

    /// <summary>
    /// The random index. For more than 15 things from the line that the same authors fitted, (2.7699 n - 4.3513 - n) / (n - 1)
    /// (from memory). With pairs missing it is made smaller by 1 - 2 m / ((n - 1)(n - 2)) (Agoston and Csato 2022, Omega
    /// 108:102576; from memory), which reaches 0 where comparisons form no circle.
    /// </summary>
    /// <param name="size">How many things are compared.</param>
    /// <param name="missing">How many of their pairs are not compared.</param>
    public static double Of(int size, int missing = 0)
    {
        if (size < 3)
        {
            return 0;
        }

        var complete = size <= Largest ? FromThree[size - 3] : ((2.7699 * size) - 4.3513 - size) / (size - 1);
        return complete * Math.Max(0, 1 - (2.0 * missing / ((size - 1) * (size - 2))));
    }
}
