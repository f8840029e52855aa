using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Text;
using ScoreRules.Statistics.Agreement;
using ScoreRules.Tiering;

namespace ScoreRules.Comparing;

/// <summary>Compares two judged houses: lists, cautions, and which block of rules moved what.</summary>
public sealed class HouseComparer
{
    private readonly Judgement old;
    private readonly Judgement now;
    private readonly ImmutableArray<RuleChange> changes;
    private readonly Attribution attribution;
    private readonly LinesBehind lines;

    private HouseComparer(Judgement old, Judgement now, Action<int, int>? progress)
    {
        (this.old, this.now) = (old, now);
        changes = RuleChanges.Between(old, now);
        attribution = Attribution.Of(old, now, [.. changes.Select(change => change.Block).Distinct().Order()], progress);
        lines = new LinesBehind(old, now, changes);
    }

    /// <summary>Compares.</summary>
    /// <param name="old">The old house, judged without errors and for nobody in particular.</param>
    /// <param name="now">The new house, likewise.</param>
    /// <param name="progress">Told how many mixtures of the two are judged and how many there are; null for nobody.</param>
    public static HouseComparison Compare(Judgement old, Judgement now, Action<int, int>? progress = null) => new HouseComparer(old, now, progress).Compare();

    private HouseComparison Compare()
    {
        var pairs = now.Rankings.Select(ranking => (Old: ListOf(old, ranking), New: ranking)).ToList();
        return new HouseComparison(old, now)
        {
            Cautions = CautionChanges.Between(old, now),
            Changes = changes,
            Blocks = attribution.Blocks,
            RenamedTiers = [.. old.Ruleset.Tiers.Zip(now.Ruleset.Tiers).Where(pair => !NameText.Same(pair.First.Name, pair.Second.Name))],
            GoneTargets = [.. old.Rankings.Where(ranking => ListOf(now, ranking) is null).Select(ranking => ranking.Target)],
            NewTargets = [.. pairs.Where(pair => pair.Old is null).Select(pair => pair.New.Target)],
            Targets = [.. pairs.Where(pair => pair.Old is not null).Select(pair => Compare(pair.Old!, pair.New))],
        };
    }

    private static TargetRanking? ListOf(Judgement judgement, TargetRanking ranking) => judgement.Rankings.FirstOrDefault(other => NameText.Same(other.Target.Name, ranking.Target.Name));

    private TargetComparison Compare(TargetRanking before, TargetRanking after)
    {
        var (tau, common) = ListAgreement.TauB(before, after);
        return new TargetComparison(before, after, [.. TargetChanges.Between(before, after).Select(change => change with { Parts = PartsOf(change, before, after) })])
        {
            Common = common,
            TauB = tau,
            Top = ListAgreement.Top(before, after, TargetComparison.Persistence),
            Blocks = [.. attribution.Blocks.Select(block => Alone(block, after))],
        };
    }

    private BlockAlone Alone(RuleBlock block, TargetRanking after)
    {
        var target = NameText.Key(after.Target.Name);
        var (before, with) = (attribution.RanksWith(null, target), attribution.RanksWith(block, target));
        var told = before.Length >= 2 && with.All(double.IsFinite);
        var gaps = Rows(after).Select(row => attribution.Of(Standings.Key(row))).OfType<ImmutableArray<(RuleBlock Block, Standing Part)>>()
            .Select(parts => Math.Abs(parts.First(part => part.Block == block).Part.Gap));
        return new BlockAlone(block, told ? RankCorrelation.TauB(before, with) : null, gaps.DefaultIfEmpty(0).Average());
    }

    private ImmutableArray<BlockPart> PartsOf(PlacementChange change, TargetRanking before, TargetRanking after)
    {
        if ((change.Old?.Row ?? change.OldLeftOut?.Row) is not { } oldRow || (change.New?.Row ?? change.NewLeftOut?.Row) is not { } newRow || attribution.Of(Standings.Key(newRow)) is not { } parts)
        {
            return [];
        }

        return
        [
            .. parts.Where(part => !IsNothing(part.Part))
                .Select(part => new BlockPart(part.Block, part.Part.Gap, part.Part.Rank, part.Part.Tier, lines.Of(part.Block, oldRow, before, newRow, after)))
                .OrderByDescending(part => Rounding.Compared(Math.Abs(part.Tier))).ThenByDescending(part => Rounding.Compared(Math.Abs(part.Gap))).ThenBy(part => part.Block),
        ];
    }

    private static bool IsNothing(Standing part) =>
        Rounding.Compared(part.Gap) == 0 && Rounding.Compared(part.Rank) == 0 && Rounding.Compared(part.Tier) == 0;

    private static IEnumerable<PlacementRow> Rows(TargetRanking ranking) => ranking.Placements.Select(placement => placement.Row).Concat(ranking.LeftOut.Select(row => row.Row));
}
