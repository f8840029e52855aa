using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Tiering;

/// <summary>
/// Ranks each target: gap to the benchmark, tier, limits, order. Order is tier after limits first, then score, then name.
/// </summary>
/// <param name="ruleset">The house.</param>
/// <param name="catalogue">Its movements.</param>
/// <param name="inferred">What its rules found.</param>
/// <param name="principle">By row: points before evidence.</param>
/// <param name="scores">By row: points after it, by which movements are ranked.</param>
/// <param name="findings">Where clashes are reported.</param>
public sealed class Ranker(BoundRuleset ruleset, MovementCatalogue catalogue, InferenceResult inferred, double[] principle, double[] scores, DiagnosticBag findings)
{
    private readonly LimitRule limits = new(ruleset, inferred, findings);
    private readonly JudgementRule judgements = new(ruleset);
    private readonly TierRule tiers = new(ruleset.Tiers);
    private readonly EffectiveRules<ExclusionDefinition> exclusions = new(ruleset.Exclusions, inferred);

    /// <summary>The rankings, in the order of the targets. Tiers must not be empty.</summary>
    public ImmutableArray<TargetRanking> Rank()
    {
        var byTarget = ruleset.Targets.Select(_ => new List<PlacementRow>()).ToArray();
        foreach (var row in inferred.Facts.Rows)
        {
            byTarget[row.Target.Index].Add(row);
        }

        return [.. ruleset.Targets.Select(target => Rank(target, byTarget[target.Index]))];
    }

    private TargetRanking Rank(TargetDefinition target, List<PlacementRow> rows)
    {
        var benchmark = BenchmarkRow(target, rows);
        var yardstick = benchmark is not null && exclusions.AnyAt(benchmark.Index);
        var ranked = rows.FindAll(row => !exclusions.AnyAt(row.Index));
        // Movements are numbered by name.
        var leftOut = rows.FindAll(row => exclusions.AnyAt(row.Index)).OrderBy(row => row.Movement.Index)
            .Select(row => new LeftOutRow(row, scores[row.Index], exclusions.At(row.Index)));
        return new TargetRanking(target, benchmark, yardstick, Place(ranked, benchmark), [.. leftOut]);
    }

    private PlacementRow? BenchmarkRow(TargetDefinition target, List<PlacementRow> rows)
    {
        var movement = catalogue.Find(target.Benchmark);
        var row = rows.Find(row => movement is not null && row.Movement.Index == movement.Index);
        if (row is null && movement is not null)
        {
            findings.Add(new Diagnostic("SR5011", Severity.Error, $"The benchmark \"{target.Benchmark}\" does not train \"{target.Name}\"", new Label(target.Info.Location, "measured against it"))
            {
                Others = [new Label(movement.Location, "trains something else")],
                Suggestions = [new Suggestion($"choose a benchmark that trains \"{target.Name}\"")],
            });
        }

        return row;
    }

    private ImmutableArray<Placement> Place(List<PlacementRow> ranked, PlacementRow? benchmark)
    {
        var benchmarkScore = benchmark is null ? double.NaN : scores[benchmark.Index];
        var compared = ranked.Select(row => Rounding.Compared(scores[row.Index])).ToArray();
        var rising = tiers.DependsOnOthers ? compared.ToArray() : [];
        Array.Sort(rising);
        var (drafts, keys) = (new DraftPlacement[ranked.Count], new RankKey[ranked.Count]);
        for (var i = 0; i < drafts.Length; i++)
        {
            drafts[i] = Draft(ranked[i], compared[i], benchmarkScore, rising);
            keys[i] = new RankKey(drafts[i].Tier.Index, compared[i], ranked[i].Movement.Index, i);
        }

        Array.Sort(keys);
        return WithRanks(drafts, keys, benchmark, benchmarkScore);
    }

    private DraftPlacement Draft(PlacementRow row, double compared, double benchmarkScore, double[] rising)
    {
        var score = scores[row.Index];
        var better = rising.Length - UpperBound(rising, compared);
        var before = tiers.Of(compared, Rounding.Compared(score - benchmarkScore), better, rising.Length);
        var (tier, applying, binding) = limits.Apply(row, before);
        var (placed, judgement) = judgements.Apply(row, tier, applying);
        return new DraftPlacement(row, score, before, placed, applying, binding, judgement);
    }

    private static int UpperBound(double[] sorted, double value)
    {
        var (low, high) = (0, sorted.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = sorted[middle] <= value ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private ImmutableArray<Placement> WithRanks(DraftPlacement[] drafts, RankKey[] keys, PlacementRow? benchmark, double benchmarkScore)
    {
        var ranked = ImmutableArray.CreateBuilder<Placement>(keys.Length);
        for (var i = 0; i < keys.Length; i++)
        {
            var tiedAbove = i > 0 && keys[i - 1].IsTiedWith(keys[i]);
            var tiedBelow = i + 1 < keys.Length && keys[i].IsTiedWith(keys[i + 1]);
            ranked.Add(Finish(drafts[keys[i].Position], benchmark, benchmarkScore, tiedAbove ? ranked[i - 1].Rank : i + 1, tiedAbove || tiedBelow));
        }

        return ranked.MoveToImmutable();
    }

    private Placement Finish(DraftPlacement draft, PlacementRow? benchmark, double benchmarkScore, int rank, bool isTied)
    {
        var gap = draft.Score - benchmarkScore;
        var (position, toBorder) = tiers.Inside(draft.Before, draft.Score, gap);
        return new Placement(draft.Row, draft.Score, principle[draft.Row.Index], gap, draft.Tier, draft.Before)
        {
            Rank = rank,
            IsTied = isTied,
            IsBenchmark = benchmark?.Index == draft.Row.Index,
            Limits = draft.Limits,
            Binding = draft.Binding,
            Judgement = draft.Judgement,
            Position = position,
            ToBorder = toBorder,
        };
    }
}
