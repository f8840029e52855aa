using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Report.Views;

/// <summary>The one scale on which all movements of a target stand: points from the benchmark, or points where there is none.</summary>
public sealed class Ruler
{
    private const int Step = 6;
    private readonly double low;
    private readonly double high;

    /// <summary>Lays a scale through all placements, with and without studies, their spans and zero.</summary>
    public Ruler(TargetRanking ranking, TargetRanking? onPrinciple, ImmutableArray<TierDefinition> tiers, ReportSlots slots)
    {
        HasBenchmark = ranking.Benchmark is not null;
        var spans = ranking.Placements.Select(slots.Span).OfType<(double Low, double High)>().SelectMany(span => new[] { span.Low, span.High });
        var alone = (onPrinciple?.Placements ?? []).Where(placement => ranking.Of(placement.Row.Movement) is not null).Select(Value);
        double[] shown = [.. ranking.Placements.Select(Value), .. alone, .. spans, .. HasBenchmark ? [0.0] : Array.Empty<double>()];
        low = shown.Length == 0 ? 0 : Math.Floor(shown.Min() / Step) * Step;
        high = Math.Max(low + Step, shown.Length == 0 ? Step : Math.Ceiling(shown.Max() / Step) * Step);
        Borders = [.. Cuts(ranking, tiers).Where(cut => cut > low && cut < high)];
        Ticks = [.. Enumerable.Range(-50, 101).Select(i => i * (high - low > 48 ? 20.0 : 10.0)).Where(tick => tick >= low && tick <= high && (!HasBenchmark || tick != 0))];
    }

    /// <summary>Whether zero is the benchmark.</summary>
    public bool HasBenchmark { get; }

    /// <summary>Where tiers meet.</summary>
    public ImmutableArray<double> Borders { get; }

    /// <summary>Round numbers along the scale, without zero.</summary>
    public ImmutableArray<double> Ticks { get; }

    /// <summary>Where a placement stands on the scale.</summary>
    public double Value(Placement placement) => HasBenchmark ? placement.Gap : placement.Score;

    /// <summary>A value as a share of the width: "63.4%".</summary>
    public string At(double value) => ((value - low) / (high - low) * 100).ToString("0.##", CultureInfo.InvariantCulture) + "%";

    private static IEnumerable<double> Cuts(TargetRanking ranking, ImmutableArray<TierDefinition> tiers)
    {
        var benchmark = ranking.Benchmark is null || ranking.Placements.IsEmpty ? 0 : ranking.Placements[0].Score - ranking.Placements[0].Gap;
        return tiers.Where(tier => tier.Cut is not (TierCut.Rest or TierCut.Top)).Select(tier => tier.Cut == TierCut.Score ? tier.Amount - benchmark : tier.LowerBorder);
    }
}
