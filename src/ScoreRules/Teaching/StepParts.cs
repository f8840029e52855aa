using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Modelling;
using ScoreRules.Tiering;

namespace ScoreRules.Teaching;

/// <summary>What gives two placements of one target different points, each part with both facts.</summary>
internal static class StepParts
{
    private const string Studies = "studies";

    /// <summary>All parts that are not zero, largest first; they add up to the difference of the scores.</summary>
    public static ImmutableArray<Reason> Between(PlacementExplanation own, PlacementExplanation cousin, DerivedFactSource? derived) =>
    [
        .. new PlacementComparison(own, cousin).Parts.Select(part => Part(part, own, cousin, derived)).Append(Moved(own, cousin)).OfType<Reason>()
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

    // What studies moved is no part of principle; told as one part, so that the parts still add up.
    private static Reason? Moved(PlacementExplanation own, PlacementExplanation cousin)
    {
        var apart = Shift(own) - Shift(cousin);
        return Rounding.Compared(apart) == 0 ? null : new Reason(Studies, apart, own.Row.Target.Info, null);
    }

    private static double Shift(PlacementExplanation explained) => explained.Placement is { } placement ? placement.Score - placement.PrincipleScore : 0;

    private static CriterionExplanation? Criterion(PlacementExplanation explained, StatementInfo statement) =>
        explained.Criteria.FirstOrDefault(criterion => ReferenceEquals(criterion.Criterion.Info, statement));
}
