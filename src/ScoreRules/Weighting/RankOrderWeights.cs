namespace ScoreRules.Weighting;

/// <summary>Weights from an order of importance alone, the most important first. Shares of 1.</summary>
public static class RankOrderWeights
{
    /// <summary>
    /// Rank-order centroid: w_i = (1/n) (1/i + 1/(i+1) + ... + 1/n), the mean of all weights that agree with the order
    /// (Barron and Barrett 1996, Management Science 42:1515). For three things 11/18, 5/18, 2/18.
    /// </summary>
    /// <param name="count">How many things are ordered, 1 or more.</param>
    public static double[] Centroid(int count)
    {
        var weights = new double[count];
        var sum = 0.0;
        for (var rank = count; rank >= 1; rank--)
        {
            sum += 1.0 / rank;
            weights[rank - 1] = sum / count;
        }

        return weights;
    }

    /// <summary>
    /// Rank sum: w_i = (n + 1 - i) / (1 + 2 + ... + n) (Stillwell, Seaver and Edwards 1981, Organizational Behavior and Human
    /// Performance 28:62). Flatter than the centroid; kept to compare with.
    /// </summary>
    /// <param name="count">How many things are ordered, 1 or more.</param>
    public static double[] Sum(int count) => WeightVector.Normalised([.. Enumerable.Range(0, count).Select(rank => (double)(count - rank))]);

    /// <summary>Rank reciprocal: w_i = (1/i) / (1 + 1/2 + ... + 1/n) (Stillwell, Seaver and Edwards 1981). Kept to compare with.</summary>
    /// <param name="count">How many things are ordered, 1 or more.</param>
    public static double[] Reciprocal(int count) => WeightVector.Normalised([.. Enumerable.Range(1, count).Select(rank => 1.0 / rank)]);
}
