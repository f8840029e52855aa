using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Modelling;
using ScoreRules.Tiering;

namespace ScoreRules.Teaching;

/// <summary>What gives two placements of one target different points, each part with both facts.</summary>
internal static class StepParts
{
    /// <summary>All parts that are not zero, largest first; they add up to the difference of the scores.</summary>
    public static ImmutableArray<Reason> Between(PlacementExplanation own, PlacementExplanation cousin, DerivedFactSource? derived) =>
    [
        .. new PlacementComparison(own, cousin).Parts.Select(part => Part(part, own, cousin, derived)).Concat(Moved(own, cousin))
            .Where(part => part.Points != 0)
            .OrderByDescending(part => Math.Abs(Rounding.Compared(part.Points))).ThenBy(part => part.Name, StringComparer.Ordinal),
    ];

    private static Reason Part(ComparedPoints part, PlacementExplanation own, PlacementExplanation cousin, DerivedFactSource? derived)
    {
        var (ours, theirs) = (Criterion(own, part.Statement), Criterion(cousin, part.Statement));
        return ours is null
            ? new Reason(part.Name, part.Apart, part.Statement, null, part.Second != 0)
            : new Reason(part.Name, part.Apart, part.Statement, ours with
            {
                BenchmarkFact = theirs?.Fact,
                BenchmarkPoints = part.Second,
                IsApart = ours.Attribute.IsDerived ? derived?.AreApart(own.Row, cousin.Row, ours.Attribute.Name) : null,
            });
    }

    // Studies and judgements by another movement, as reasons against a benchmark are told, with the cousin in the benchmark's place.
    private static IEnumerable<Reason> Moved(PlacementExplanation own, PlacementExplanation cousin) => EvidenceReasons.Of(own with { BenchmarkMoved = cousin.Evidence });

    private static CriterionExplanation? Criterion(PlacementExplanation explained, StatementInfo statement) =>
        explained.Criteria.FirstOrDefault(criterion => ReferenceEquals(criterion.Criterion.Info, statement));
}
