using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Explanation;

/// <summary>Two explanations of one target, criterion beside criterion and award beside award.</summary>
/// <param name="First">One placement.</param>
/// <param name="Second">The other.</param>
public sealed record PlacementComparison(PlacementExplanation First, PlacementExplanation Second)
{
    /// <summary>All that gave points to either, criteria first, in the order of the house. The parts add up to the scores on principle.</summary>
    public ImmutableArray<ComparedPoints> Parts { get; } = [.. Criteria(First, Second), .. Awards(First, Second)];

    private static IEnumerable<ComparedPoints> Criteria(PlacementExplanation first, PlacementExplanation second)
    {
        var criteria = first.Criteria.Concat(second.Criteria).Select(criterion => criterion.Criterion).DistinctBy(criterion => criterion.Name, StringComparer.Ordinal);
        return criteria.Select(criterion => new ComparedPoints(criterion.Name, Points(first, criterion.Name), Points(second, criterion.Name), criterion.Info));
    }

    private static double Points(PlacementExplanation explained, string criterion) =>
        explained.Criteria.FirstOrDefault(part => part.Criterion.Name == criterion)?.Points ?? 0;

    private static IEnumerable<ComparedPoints> Awards(PlacementExplanation first, PlacementExplanation second)
    {
        var (own, others) = (Held(first), Held(second));
        return own.Union(others).Select(award => new ComparedPoints(
            award.Info.Name ?? award.Info.Kind,
            own.Contains(award) ? award.Points : 0,
            others.Contains(award) ? award.Points : 0,
            award.Info));
    }

    private static List<AwardDefinition> Held(PlacementExplanation explained) =>
        [.. explained.Held<AwardDefinition>().Select(rule => (AwardDefinition)rule.Rule)];
}
