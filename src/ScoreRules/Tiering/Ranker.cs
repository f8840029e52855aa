using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Scoring;

namespace ScoreRules.Tiering;

/// <summary>
/// Ranks each target: gap to the benchmark, tier, limits, order. Order is tier after limits first, then score, then name.
/// </summary>
public sealed class Ranker(BoundRuleset ruleset, MovementCatalogue catalogue, InferenceResult inferred, ScoreTable scores, DiagnosticBag findings)
{
    private readonly LimitRule limits = new(ruleset, inferred, findings);
    private readonly TierRule tiers = new(ruleset.Tiers);

    /// <summary>The rankings, in the order of the targets. Tiers must not be empty.</summary>
    public ImmutableArray<TargetRanking> Rank()
    {
        var byTarget = inferred.Facts.Rows.ToLookup(row => row.Target.Index);
        return [.. ruleset.Targets.Select(target => Rank(target, [.. byTarget[target.Index]]))];
    }

    private TargetRanking Rank(TargetDefinition target, List<PlacementRow> rows)
    {
        var excluded = rows.ToLookup(row => ruleset.Exclusions.Any(rule => inferred.Outcome(rule).Effective.Contains(row.Index)));
        var ranked = excluded[false].ToList();
        var benchmark = BenchmarkRow(target, rows);
        var benchmarkScore = benchmark is null ? double.NaN : scores.Principle[benchmark.Index];
        var values = ranked.Select(row => Rounding.Compared(scores.Principle[row.Index])).Order().ToList();
        var placements = ranked.Select(row => Place(row, benchmark, benchmarkScore, values)).ToList();
        var yardstick = benchmark is not null && excluded[true].Contains(benchmark);
        var leftOut = excluded[true].OrderBy(row => NameText.Key(row.Movement.Name), StringComparer.Ordinal)
            .Select(row => new LeftOutRow(row, scores.Principle[row.Index], [.. ruleset.Exclusions.Where(rule => inferred.Outcome(rule).Effective.Contains(row.Index))]));
        return new TargetRanking(target, benchmark, yardstick, WithRanks(placements), [.. leftOut]);
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

    private Placement Place(PlacementRow row, PlacementRow? benchmark, double benchmarkScore, List<double> values)
    {
        var score = scores.Principle[row.Index];
        var gap = score - benchmarkScore;
        var better = values.Count - UpperBound(values, Rounding.Compared(score));
        var before = tiers.Of(score, gap, better, values.Count);
        var limited = limits.Apply(row, before);
        var (position, toBorder) = tiers.Inside(before, score, gap);
        return new Placement(row, score, score, gap, limited.Tier, before)
        {
            IsBenchmark = benchmark?.Index == row.Index,
            Limits = limited.Limits,
            Binding = limited.Binding,
            Position = position,
            ToBorder = toBorder,
        };
    }

    private static int UpperBound(List<double> sorted, double value)
    {
        var (low, high) = (0, sorted.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = sorted[middle] <= value ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Puts placements in order and counts their ranks.</summary>
    internal static ImmutableArray<Placement> WithRanks(IReadOnlyCollection<Placement> placements)
    {
        var ordered = placements.OrderBy(placement => placement.Tier.Index)
            .ThenByDescending(placement => Rounding.Compared(placement.Score))
            .ThenBy(placement => NameText.Key(placement.Row.Movement.Name), StringComparer.Ordinal).ToList();
        var ranked = ImmutableArray.CreateBuilder<Placement>(ordered.Count);
        for (var i = 0; i < ordered.Count; i++)
        {
            var tiedAbove = i > 0 && Same(ordered[i - 1], ordered[i]);
            var tiedBelow = i + 1 < ordered.Count && Same(ordered[i], ordered[i + 1]);
            ranked.Add(ordered[i] with { Rank = tiedAbove ? ranked[i - 1].Rank : i + 1, IsTied = tiedAbove || tiedBelow });
        }

        return ranked.ToImmutable();
    }

    private static bool Same(Placement left, Placement right) =>
        left.Tier.Index == right.Tier.Index && Rounding.Compared(left.Score) == Rounding.Compared(right.Score);
}
