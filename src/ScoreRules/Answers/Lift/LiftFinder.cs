using System.Collections.Immutable;
using ScoreRules.Answers.Change;
using ScoreRules.Catalogue;
using ScoreRules.Explanation;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Lift;

/// <summary>Finds what would lift a movement to a tier.</summary>
internal static class LiftFinder
{
    /// <summary>The answer.</summary>
    public static LiftAnswer Find(AskedHouse asked)
    {
        var movement = asked.Movement(0);
        return new LiftAnswer(asked.Question, movement, [.. asked.Rankings.Select(ranking => Find(asked, ranking, movement)).OfType<LiftFinding>()]);
    }

    private static LiftFinding? Find(AskedHouse asked, TargetRanking ranking, Movement movement)
    {
        if (asked.Explain(ranking, movement) is not { } explained)
        {
            return null;
        }

        var tiers = asked.Ruleset.Tiers;
        var now = explained.Placement?.Tier.Index ?? tiers.Length;
        var wanted = asked.Question.Tier is { } named ? tiers[named.Index] : now == 0 ? null : tiers[Math.Min(now, tiers.Length) - 1];
        var finding = new LiftFinding(explained, wanted, wanted is null ? [] : Obstacles(explained, wanted), wanted is null ? 0 : Need(explained, wanted), null);
        if (finding.IsThere || wanted is null || (finding.IsBenchmark && explained.LeftOut is null && tiers[0].Cut != TierCut.Score))
        {
            return finding;
        }

        var candidates = new ChangeCandidates(new ReadAttributes(asked.Ruleset, ranking.Target), movement, ranking.Target).All();
        var trial = Trial.With(asked.OnPrinciple, movement, Trial.ShiftOf(asked.Judgement, explained.Row, ranking.Benchmark));
        var search = new ChangeSearch(new Suppositions(asked.Judgement, ranking, movement, trial), candidates, supposed => supposed.Placement is { } placement && placement.Tier.Index <= wanted.Index);
        return finding with { Found = search.Run() };
    }

    // Whatever the points: what leaves it out, caps below the tier, and a judgement that shifts it down.
    private static ImmutableArray<BoundStatement> Obstacles(PlacementExplanation explained, TierDefinition wanted)
    {
        if (explained.LeftOut is { } leftOut)
        {
            return [.. leftOut.Rules];
        }

        var placement = explained.Placement!;
        var caps = placement.Limits.Where(limit => limit.IsCap && limit.Tier.Index > wanted.Index).OrderByDescending(limit => limit.Tier.Index);
        return [.. caps, .. placement.Judgement is { Shift: > 0 } judgement ? new BoundStatement[] { judgement } : []];
    }

    private static double Need(PlacementExplanation explained, TierDefinition wanted)
    {
        var score = explained.Placement?.Score ?? explained.LeftOut!.Score;
        var gap = explained.Placement?.Gap ?? double.NaN;
        return wanted.Cut switch
        {
            TierCut.Top or TierCut.Rest => double.NaN,
            TierCut.Score => Math.Max(0, wanted.Amount - score),
            _ => Math.Max(0, wanted.LowerBorder - gap),
        };
    }
}
