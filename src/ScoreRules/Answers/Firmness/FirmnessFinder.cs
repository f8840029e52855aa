using System.Collections.Immutable;
using ScoreRules.Answers.Order;
using ScoreRules.Certainty;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Sensitivity;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Firmness;

/// <summary>Finds the smallest change of one weight that puts two movements level, and judges again on both sides of it.</summary>
internal static class FirmnessFinder
{
    // Judged so far to either side of the weight at which they are level, as a share of the way to it.
    private const double Hair = 1e-6;
    private const int MostSecants = 12;

    /// <summary>The answer.</summary>
    public static FirmnessAnswer Find(AskedHouse asked)
    {
        var findings = asked.Rankings.Select(ranking => OrderFinder.Find(asked, ranking)).OfType<OrderFinding>().Select(order => Find(asked.Judgement, order) with { Probability = OftenAhead(asked.Judgement, order) });
        return new FirmnessAnswer(asked.Question, asked.Movement(0), asked.Movement(1), [.. findings]);
    }

    // Ahead by points; what limits decide, no try of points can tell.
    private static double? OftenAhead(Judgement judgement, OrderFinding order) =>
        order.Outcome is OrderOutcome.NoOrder || order.IsByTier ? null
            : HouseCertainty.Of(judgement with { Rankings = [order.Upper.Ranking] }).Targets[0].AheadOf(order.Upper.Row.Movement, order.Lower.Row.Movement);

    /// <summary>How firm one order is.</summary>
    public static FirmnessFinding Find(Judgement judgement, OrderFinding order)
    {
        var (upper, lower) = (order.Upper.Criteria, order.Lower.Criteria);
        var same = upper.Select(part => part.Criterion.Name).SequenceEqual(lower.Select(part => part.Criterion.Name), StringComparer.Ordinal);
        if (order.Outcome is OrderOutcome.NoOrder or OrderOutcome.Level || !same || upper.IsEmpty)
        {
            return new FirmnessFinding(order, [], FirmnessVerdict.NotComparable);
        }

        if (order.IsByTier)
        {
            return new FirmnessFinding(order, [], FirmnessVerdict.ByTier);
        }

        var beyond = BeyondCriteria(order) / 100;
        var swap = WeightSwap.Of([.. upper.Select(part => part.Weight)], [.. upper.Select(part => part.Worth)], [.. lower.Select(part => part.Worth)], beyond);
        var swaps = Enumerable.Range(0, upper.Length).Select(at => Swap(judgement, order, swap, at)).OfType<SwapFinding>().Where(found => found.IsConfirmed)
            .OrderBy(found => Math.Abs(Rounding.Compared(found.Parts))).ThenBy(found => found.Criterion.Name, StringComparer.Ordinal).ToImmutableArray();
        return new FirmnessFinding(order, swaps, !swaps.IsEmpty ? FirmnessVerdict.OneWeight : CanBeAhead(order, beyond) ? FirmnessVerdict.SeveralWeights : FirmnessVerdict.Impossible);
    }

    // Whether the lower one is better anywhere by more than awards make up for: to be level is not enough to change places.
    private static bool CanBeAhead(OrderFinding order, double beyond) =>
        order.Upper.Criteria.Zip(order.Lower.Criteria).Any(pair => Rounding.Compared(pair.First.Worth - pair.Second.Worth + beyond) < 0);

    // Points ahead by awards and studies, which do not depend on weights.
    private static double BeyondCriteria(OrderFinding order) => order.Reasons.Where(reason => reason.Upper is null && reason.Lower is null).Sum(reason => reason.Points);

    private static SwapFinding? Swap(Judgement judgement, OrderFinding order, WeightSwap swap, int at)
    {
        var part = order.Upper.Criteria[at];
        if (swap.Single(at) is not { } share || share >= 1 - 1e-12)
        {
            return null;
        }

        var others = part.Weight / part.Share * (1 - part.Share);
        var level = share / (1 - share) * others;
        if (Rounding.Compared(level) <= 0)
        {
            // Level only without the criterion: there is no weight beyond.
            return null;
        }

        var found = Confirmed(judgement, order, part, level, others);
        return found is { IsConfirmed: true } || !Studies(judgement, order) ? found : Confirmed(judgement, order, part, LevelWithStudies(judgement, order, part, level), others);
    }

    private static SwapFinding Confirmed(Judgement judgement, OrderFinding order, CriterionExplanation part, double level, double others)
    {
        var parts = 100 * (level - part.Weight) / (part.Weight + others);
        var (before, _) = Ahead(judgement, order, part.Criterion, part.Weight + ((level - part.Weight) * (1 - Hair)));
        var (beyond, places) = Ahead(judgement, order, part.Criterion, part.Weight + ((level - part.Weight) * (1 + Hair)));
        return new SwapFinding(part.Criterion, part.Weight, level, parts, before > 0 != beyond > 0 && before > 0 == order.Ahead > 0, places < 0);
    }

    private static bool Studies(Judgement judgement, OrderFinding order) => judgement.Evidence?.Targets[order.Upper.Row.Target.Index].Claims.IsEmpty == false;

    // Studies answer to other scores on principle: from the weight found without that, by secants.
    private static double LevelWithStudies(Judgement judgement, OrderFinding order, CriterionExplanation part, double level)
    {
        var (x0, y0, x1) = (part.Weight, order.Ahead, level);
        for (var step = 0; step < MostSecants && x1 >= 0; step++)
        {
            var y1 = Ahead(judgement, order, part.Criterion, x1).Points;
            if (y1 == y0 || Math.Abs(y1) < 1e-10)
            {
                return x1;
            }

            (x0, y0, x1) = (x1, y1, x1 - (y1 * (x1 - x0) / (y1 - y0)));
        }

        return Math.Max(0, x1);
    }

    // By how many points, and by how many ranks, the upper one is ahead with another weight.
    private static (double Points, int Ranks) Ahead(Judgement judgement, OrderFinding order, CriterionDefinition criterion, double weight)
    {
        var target = order.Upper.Row.Target;
        var again = Judge.Again(judgement, Reweighting.With(judgement.Ruleset, criterion, target, Math.Max(0, weight)), judgement.Catalogue);
        var ranking = again.Rankings.FirstOrDefault(one => one.Target.Index == target.Index);
        var (upper, lower) = (ranking?.Of(order.Upper.Row.Movement), ranking?.Of(order.Lower.Row.Movement));
        return upper is null || lower is null ? (double.NaN, 0) : (upper.Score - lower.Score, lower.Rank - upper.Rank);
    }
}
