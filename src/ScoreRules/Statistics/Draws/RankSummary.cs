namespace ScoreRules.Statistics.Draws;

/// <summary>What the probabilities of the ranks of one thing come to.</summary>
public static class RankSummary
{
    /// <summary>SUCRA, the mean share of the others that it outranks: sum over ranks r = 1..n of p_r (n - r) / (n - 1) (Salanti, Ades and Ioannidis 2011, Journal of Clinical Epidemiology 64:163). 0 to 1.</summary>
    /// <param name="probabilities">The probability of each rank, the best first; two or more.</param>
    /// <exception cref="StatisticsInputException">Probabilities that are none, or a single one.</exception>
    public static double SurfaceUnderCumulative(IReadOnlyList<double> probabilities)
    {
        var count = Checked(probabilities);
        return Enumerable.Range(0, count).Sum(rank => probabilities[rank] * (count - 1 - rank)) / (count - 1);
    }

    /// <summary>The best rank, 1 for the best, that is reached or passed with a probability.</summary>
    /// <param name="probabilities">The probability of each rank, the best first; two or more.</param>
    /// <param name="share">Between 0 and 1.</param>
    /// <exception cref="StatisticsInputException">Probabilities that are none, or a share out of its range.</exception>
    public static int Quantile(IReadOnlyList<double> probabilities, double share)
    {
        var count = Checked(probabilities);
        Require.Share(share, "A share of a distribution");
        var (rank, sum) = (0, probabilities[0]);
        while (sum < share && rank < count - 1)
        {
            sum += probabilities[++rank];
        }

        return rank + 1;
    }

    private static int Checked(IReadOnlyList<double> probabilities)
    {
        Require.AtLeast(probabilities.Count, 2, "The number of ranks");
        var sum = probabilities.Sum(probability => Require.NotNegative(probability, "The probability of a rank"));
        return Math.Abs(sum - 1) < 1e-6 ? probabilities.Count : throw new StatisticsInputException("The probabilities of all ranks must sum to 1.");
    }
}
