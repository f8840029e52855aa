using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Agreement;

/// <summary>How far several judges agree on the order of the same things (Kendall and Babington Smith 1939, Annals of Mathematical Statistics 10:275).</summary>
/// <param name="RankSums">The sum of the ranks of each thing, rank 1 for the lowest rating.</param>
/// <param name="S">The sum of squares of the rank sums about their mean.</param>
/// <param name="Uncorrected">12 S / (m^2 (n^3 - n)), 0 to 1, with m judges and n things.</param>
/// <param name="W">12 S / (m^2 (n^3 - n) - m T), T the sum of t^3 - t over ties within judges; null when no judge tells any two things apart.</param>
/// <param name="Judges">m.</param>
public sealed record Concordance(IReadOnlyList<double> RankSums, double S, double Uncorrected, double? W, int Judges)
{
    /// <summary>Friedman's chi-squared, m (n - 1) W (Friedman 1937, Journal of the American Statistical Association 32:675).</summary>
    public double? ChiSquared => Judges * (RankSums.Count - 1) * W;

    /// <summary>Probability of at least as much agreement by chance, n - 1 degrees of freedom; near for few judges.</summary>
    public double? Probability => ChiSquared is { } value ? ChiSquaredDistribution.Above(value, RankSums.Count - 1) : null;

    /// <summary>The mean of Spearman's rho over all pairs of judges, (m W - 1) / (m - 1); exact without ties.</summary>
    public double? MeanRho => ((Judges * W) - 1) / (Judges - 1);

    /// <summary>Compares judges.</summary>
    /// <param name="ratings">For each judge the ratings of all things; two judges and two things or more.</param>
    /// <exception cref="StatisticsInputException">Too few, lists of different length, or no numbers.</exception>
    public static Concordance Of(IReadOnlyList<IReadOnlyList<double>> ratings)
    {
        var judges = Require.AtLeast(ratings.Count, 2, "The number of judges");
        var things = Require.AtLeast(ratings[0].Count, 2, "The number of things to compare");
        var sums = new double[things];
        var ties = 0.0;
        foreach (var judge in ratings)
        {
            Require.SameLength(judge.Count, things, "The ratings of two judges");
            var ranks = AverageRanks.Of([.. judge.Select(rating => Require.Finite(rating, "A rating"))]);
            ties += ranks.TieSum;
            for (var i = 0; i < things; i++)
            {
                sums[i] += ranks.Ranks[i];
            }
        }

        var middle = judges * (things + 1) / 2.0;
        var s = sums.Sum(sum => (sum - middle) * (sum - middle));
        var most = (double)judges * judges * (((double)things * things * things) - things);
        return new Concordance(sums, s, 12 * s / most, most > judges * ties ? 12 * s / (most - (judges * ties)) : null, judges);
    }
}
