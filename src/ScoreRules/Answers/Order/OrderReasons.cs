using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Order;

/// <summary>Takes two explanations apart into what sets them apart.</summary>
internal static class OrderReasons
{
    /// <summary>What studies did, beyond principle.</summary>
    public const string Studies = "studies";

    /// <summary>What placing a movement by another one did.</summary>
    public const string Placed = "placed by judgement";

    /// <summary>All that sets two placements apart, largest first, then by name; they add up to the difference of the scores.</summary>
    public static ImmutableArray<OrderReason> Of(PlacementExplanation upper, PlacementExplanation lower) =>
    [
        .. Criteria(upper, lower).Concat(Awards(upper, lower)).Concat(BeyondPrinciple(upper, lower)).Where(reason => Rounding.Compared(reason.Points) != 0)
            .OrderByDescending(reason => Math.Abs(Rounding.Compared(reason.Points))).ThenBy(reason => reason.Name, StringComparer.Ordinal),
    ];

    /// <summary>
    /// How many of the reasons in favour, the largest first, outweigh all reasons against together. No smaller set does, since
    /// any other set of that size is worth no more.
    /// </summary>
    /// <returns>The count; 0 when nothing in favour is needed or all of it is not enough.</returns>
    public static int Sufficient(ImmutableArray<OrderReason> reasons)
    {
        var against = -reasons.Where(reason => reason.Points < 0).Sum(reason => reason.Points);
        var (sum, count) = (0.0, 0);
        foreach (var reason in reasons.Where(reason => reason.Points > 0))
        {
            (sum, count) = (sum + reason.Points, count + 1);
            if (Rounding.Compared(sum) > Rounding.Compared(against))
            {
                return count;
            }
        }

        return 0;
    }

    private static IEnumerable<OrderReason> Criteria(PlacementExplanation upper, PlacementExplanation lower)
    {
        var names = upper.Criteria.Concat(lower.Criteria).Select(part => part.Criterion.Name).Distinct(StringComparer.Ordinal);
        return names.Select(name => Criterion(name, Part(upper, name), Part(lower, name)));
    }

    private static CriterionExplanation? Part(PlacementExplanation explained, string criterion) => explained.Criteria.FirstOrDefault(part => part.Criterion.Name == criterion);

    private static OrderReason Criterion(string name, CriterionExplanation? upper, CriterionExplanation? lower) =>
        new(name, (upper?.Points ?? 0) - (lower?.Points ?? 0)) { Upper = upper, Lower = lower };

    private static IEnumerable<OrderReason> Awards(PlacementExplanation upper, PlacementExplanation lower)
    {
        var (own, others) = (upper.Held<AwardDefinition>().ToList(), lower.Held<AwardDefinition>().ToList());
        return own.Where(award => !others.Exists(other => ReferenceEquals(other.Rule, award.Rule))).Select(award => Award(award, isOfUpper: true))
            .Concat(others.Where(award => !own.Exists(other => ReferenceEquals(other.Rule, award.Rule))).Select(award => Award(award, isOfUpper: false)));
    }

    private static OrderReason Award(RuleExplanation held, bool isOfUpper)
    {
        var award = (AwardDefinition)held.Rule;
        return new OrderReason(award.Info.Name ?? award.Info.Kind, isOfUpper ? award.Points : -award.Points) { Award = held, IsOfUpper = isOfUpper };
    }

    private static IEnumerable<OrderReason> BeyondPrinciple(PlacementExplanation upper, PlacementExplanation lower)
    {
        yield return new OrderReason(Studies, (upper.Evidence?.ByStudies ?? 0) - (lower.Evidence?.ByStudies ?? 0));
        yield return new OrderReason(Placed, (upper.Evidence?.PlacePoints ?? 0) - (lower.Evidence?.PlacePoints ?? 0));
    }
}
