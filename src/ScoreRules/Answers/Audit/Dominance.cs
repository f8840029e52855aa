using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Audit;

/// <summary>At least as good on every criterion and award.</summary>
internal static class Dominance
{
    /// <summary>Whether one movement is judged by the same criteria as another and is nowhere worse: no lower worth, no award less, no penalty more.</summary>
    public static bool IsNowhereWorse(PlacementExplanation one, PlacementExplanation other) =>
        one.Criteria.Length == other.Criteria.Length
        && one.Criteria.Zip(other.Criteria).All(pair => ReferenceEquals(pair.First.Criterion, pair.Second.Criterion) && Rounding.Compared(pair.First.Worth) >= Rounding.Compared(pair.Second.Worth))
        && Awards(other).Except(Awards(one)).All(award => award.Points <= 0)
        && Awards(one).Except(Awards(other)).All(award => award.Points >= 0);

    /// <summary>All pairs in one list of which the one that is nowhere worse stands below.</summary>
    public static ImmutableArray<DominanceFinding> In(ImmutableArray<PlacementExplanation> list)
    {
        var pairs = from better in list
                    from above in list
                    where better.Placement!.Rank > above.Placement!.Rank && IsNowhereWorse(better, above)
                    select new DominanceFinding(better, above, Cause(better.Placement!, above.Placement!) ?? PlacedBy(better) ?? PlacedBy(above), IsMoved(better.Placement!) || IsMoved(above.Placement!));
        return [.. pairs];
    }

    private static bool IsMoved(Placement placement) => Rounding.Compared(placement.Score - placement.PrincipleScore) != 0;

    private static PlaceDefinition? PlacedBy(PlacementExplanation explained) =>
        explained.Evidence is { Place: { } place } moved && Rounding.Compared(moved.PlacePoints) != 0 ? place : null;

    private static BoundStatement? Cause(Placement better, Placement above) =>
        better.Judgement is { Shift: > 0 } down ? down
        : better.Binding is { IsCap: true } cap ? cap
        : above.Judgement is { Shift: < 0 } up ? up
        : above.Binding is { IsCap: false } floor ? floor
        : null;

    private static HashSet<AwardDefinition> Awards(PlacementExplanation explained) =>
        explained.Held<AwardDefinition>().Select(rule => (AwardDefinition)rule.Rule).ToHashSet((IEqualityComparer<AwardDefinition>)ReferenceEqualityComparer.Instance);
}
