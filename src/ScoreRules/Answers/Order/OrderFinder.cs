using ScoreRules.Explanation;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Order;

/// <summary>Finds why one movement stands above another.</summary>
internal static class OrderFinder
{
    /// <summary>The answer.</summary>
    public static OrderAnswer Find(AskedHouse asked)
    {
        var (first, second) = (asked.Movement(0), asked.Movement(1));
        return new OrderAnswer(asked.Question, first, second, [.. asked.Rankings.Select(ranking => Find(asked, ranking)).OfType<OrderFinding>()]);
    }

    /// <summary>How two movements stand in one target; null when one of them does not train it.</summary>
    public static OrderFinding? Find(AskedHouse asked, TargetRanking ranking) =>
        asked.Explain(ranking, asked.Movement(0)) is { } first && asked.Explain(ranking, asked.Movement(1)) is { } second ? Compare(first, second) : null;

    private static OrderFinding Compare(PlacementExplanation first, PlacementExplanation second)
    {
        var outcome = OutcomeOf(first.Placement, second.Placement);
        if (outcome == OrderOutcome.NoOrder)
        {
            return new OrderFinding(first, second, outcome, [], 0);
        }

        var reasons = outcome == OrderOutcome.Below ? OrderReasons.Of(second, first) : OrderReasons.Of(first, second);
        return new OrderFinding(first, second, outcome, reasons, OrderReasons.Sufficient(reasons));
    }

    private static OrderOutcome OutcomeOf(Placement? first, Placement? second) => (first, second) switch
    {
        (null, _) or (_, null) => OrderOutcome.NoOrder,
        ({ } one, { } other) when one.Rank == other.Rank => OrderOutcome.Level,
        ({ } one, { } other) => one.Rank < other.Rank ? OrderOutcome.Above : OrderOutcome.Below,
    };
}
