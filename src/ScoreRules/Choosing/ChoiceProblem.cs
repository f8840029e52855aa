using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>
/// A choice in whole numbers: of the candidates some are taken; each part of what is wanted counts with its weight times the worth of the
/// best candidate taken that serves it (the uncapacitated facility location problem without fixed costs; Cornuejols, Fisher and Nemhauser
/// 1977, Management Science 23:789). Where all worths are 0 or 1 this is weighted maximum coverage. Candidates stand best first; of
/// choices of equal value the smaller one wins, then the one that holds the earlier candidates.
/// </summary>
/// <param name="Weights">Weight of each part, in ten-thousandths of all, 0 or more.</param>
/// <param name="Worth">For each candidate its worth for each part, in hundredths of a point, 0 or more; 0 where it does not serve the part.</param>
/// <param name="Limits">What the choice must keep; one is a <see cref="CountLimit"/>.</param>
public sealed record ChoiceProblem(ImmutableArray<long> Weights, ImmutableArray<ImmutableArray<long>> Worth, ImmutableArray<ChoiceLimit> Limits)
{
    /// <summary>Into how many parts a point is divided.</summary>
    public const int PointScale = 100;

    /// <summary>Into how many parts all weight is divided.</summary>
    public const int WeightScale = 10_000;

    /// <summary>The value of a choice, in hundredths of a point times ten-thousandths of all weight.</summary>
    public long Value(IReadOnlyCollection<int> chosen)
    {
        var sum = 0L;
        for (var part = 0; part < Weights.Length; part++)
        {
            var best = 0L;
            foreach (var candidate in chosen)
            {
                best = Math.Max(best, Worth[candidate][part]);
            }

            sum += Weights[part] * best;
        }

        return sum;
    }

    /// <summary>A value in points: what each part is served with on average, weighted.</summary>
    public double Points(long value) => Weights.Sum() is > 0 and var all ? (double)value / (all * PointScale) : 0;

    /// <summary>Whether a choice keeps every limit.</summary>
    public bool Allows(IReadOnlyCollection<int> chosen) => Limits.All(limit => limit.Allows(chosen));

    /// <summary>The same with another number of movements at most.</summary>
    public ChoiceProblem AtMost(int count) => this with { Limits = [.. Limits.Where(limit => limit is not CountLimit), new CountLimit(count)] };

    /// <summary>The same without one of its limits.</summary>
    public ChoiceProblem Without(ChoiceLimit limit) => this with { Limits = [.. Limits.Where(other => !ReferenceEquals(other, limit))] };
}
