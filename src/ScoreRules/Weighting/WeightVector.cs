namespace ScoreRules.Weighting;

/// <summary>Weights from points given to each thing directly, as in swing weighting.</summary>
public static class WeightVector
{
    /// <summary>
    /// Points as shares of their total: w_i = p_i / sum of p. With the most important swing at 100 points this is swing
    /// weighting (von Winterfeldt and Edwards 1986, Decision Analysis and Behavioral Research).
    /// </summary>
    /// <param name="points">Points, 0 or more, not all 0.</param>
    /// <returns>Shares of 1, in the order given.</returns>
    public static double[] Normalised(IReadOnlyCollection<double> points)
    {
        var total = points.Sum();
        return [.. points.Select(point => point / total)];
    }
}
