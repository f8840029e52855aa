using System.Collections.Immutable;

namespace ScoreRules.Statistics.Beliefs;

/// <summary>What a study says of the scores: a sum of scores with factors, most often one less another, its value and its variance. Checked when it is made.</summary>
public sealed record Observation
{
    private Observation(ObservationKind kind, ImmutableArray<ScoreTerm> terms, double value, double variance)
    {
        Kind = kind;
        Terms = terms;
        Value = Require.Finite(value, "The result of a study");
        Variance = Require.Positive(variance, "The variance of a study");
    }

    /// <summary>How the study speaks.</summary>
    public ObservationKind Kind { get; }

    /// <summary>The scores that it speaks of.</summary>
    public ImmutableArray<ScoreTerm> Terms { get; }

    /// <summary>The difference found, or the least one, in points.</summary>
    public double Value { get; }

    /// <summary>Its variance, in squared points; above 0. Of <see cref="ObservationKind.AtLeast"/>, how soft the least difference is.</summary>
    public double Variance { get; }

    /// <summary>A study that measured how much one score lies above another.</summary>
    /// <exception cref="StatisticsInputException">A score against itself, or a figure out of its range.</exception>
    public static Observation Measured(int first, int second, double difference, double variance) => new(ObservationKind.Measured, Pair(first, second), difference, variance);

    /// <summary>A study that shows one score to lie above another by at least so much.</summary>
    /// <exception cref="StatisticsInputException">A score against itself, or a figure out of its range.</exception>
    public static Observation AtLeast(int better, int than, double lead, double variance) => new(ObservationKind.AtLeast, Pair(better, than), lead, variance);

    /// <summary>A study of groups of scores, such as the mean of one class less that of another, or of a single score.</summary>
    /// <exception cref="StatisticsInputException">No terms, a score twice, or a figure out of its range.</exception>
    public static Observation OfTerms(ObservationKind kind, IReadOnlyList<ScoreTerm> terms, double value, double variance)
    {
        Require.AtLeast(terms.Count, 1, "The number of scores that a study speaks of");
        foreach (var term in terms)
        {
            Require.Finite(term.Factor, "The factor of a score");
        }

        return terms.DistinctBy(term => term.Score).Count() == terms.Count
            ? new Observation(kind, [.. terms], value, variance)
            : throw new StatisticsInputException("A study speaks of a score twice; add its factors.");
    }

    /// <summary>The sum of its terms over a list of scores.</summary>
    internal double Of(ReadOnlySpan<double> scores)
    {
        var sum = 0.0;
        foreach (var term in Terms)
        {
            sum += term.Factor * scores[term.Score];
        }

        return sum;
    }

    private static ImmutableArray<ScoreTerm> Pair(int first, int second) =>
        first == second ? throw new StatisticsInputException("A study compares two scores, but was given one with itself.") : [new(first, 1), new(second, -1)];
}
