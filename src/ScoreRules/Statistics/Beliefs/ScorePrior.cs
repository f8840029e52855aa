namespace ScoreRules.Statistics.Beliefs;

/// <summary>What is believed of a list of scores before any study: normal, with a mean and a standard deviation each, and a likeness of each two that says how far they move together.</summary>
public sealed class ScorePrior
{
    private readonly double[] means;
    private readonly double[] deviations;
    private readonly Func<int, int, double> likeness;

    private ScorePrior(double[] means, double[] deviations, Func<int, int, double> likeness)
    {
        this.means = means;
        this.deviations = deviations;
        this.likeness = likeness;
    }

    /// <summary>How many scores.</summary>
    public int Count => means.Length;

    /// <summary>The mean of each score, in points.</summary>
    public IReadOnlyList<double> Means => means;

    /// <summary>Takes means, deviations and likenesses.</summary>
    /// <param name="means">The mean of each score, in points.</param>
    /// <param name="deviations">The standard deviation of each, above 0, in points.</param>
    /// <param name="likeness">
    /// The correlation of two scores that are not the same one, -1 to 1, symmetric; it is asked when it is needed. All of them together must
    /// be those of one set of things (positive semidefinite). Null for scores that have nothing to do with one another.
    /// </param>
    /// <exception cref="StatisticsInputException">No scores, lists of different length, or a figure out of its range.</exception>
    public static ScorePrior Of(IReadOnlyList<double> means, IReadOnlyList<double> deviations, Func<int, int, double>? likeness = null)
    {
        Require.AtLeast(means.Count, 1, "The number of scores");
        Require.SameLength(means.Count, deviations.Count, "Means and standard deviations");
        return new ScorePrior(
            [.. means.Select(mean => Require.Finite(mean, "The mean of a score"))],
            [.. deviations.Select(deviation => Require.Positive(deviation, "The standard deviation of a score"))],
            likeness ?? ((_, _) => 0));
    }

    /// <summary>The same doubts and likenesses about other means, as in a draw.</summary>
    /// <param name="other">The mean of each score.</param>
    /// <exception cref="StatisticsInputException">Another number of scores, or no numbers.</exception>
    public ScorePrior WithMeans(IReadOnlyList<double> other) => Of(other, deviations, likeness);

    /// <summary>Covariance of two scores: sd_i sd_j k(i, j).</summary>
    /// <exception cref="StatisticsInputException">A likeness outside of -1 to 1.</exception>
    public double Covariance(int first, int second)
    {
        if (first == second)
        {
            return deviations[first] * deviations[first];
        }

        var alike = likeness(first, second);
        return alike is >= -1 and <= 1
            ? deviations[first] * deviations[second] * alike
            : throw new StatisticsInputException("A likeness must lie from -1 to 1.");
    }
}
