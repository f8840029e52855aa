using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Answers.Audit;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Report.Views;

/// <summary>One target as a page shows it.</summary>
public sealed class TargetView
{
    /// <summary>Arranges one ranking.</summary>
    public TargetView(ReportView report, TargetRanking ranking)
    {
        (Report, Ranking) = (report, ranking);
        Ruler = new Ruler(ranking, report.Explainer.OnPrinciple.FirstOrDefault(alone => alone.Target.Index == ranking.Target.Index), report.Ruleset.Tiers, report.Slots);
        Cards = [.. ranking.Placements.Select(placement => placement.Row).Concat(ranking.LeftOut.Select(row => row.Row)).Select(row => new CardView(this, report.Explainer.Explain(ranking, row.Movement)!))];
        var ranked = Cards.Where(card => card.Placement is not null).ToLookup(card => card.Placement!.Tier.Index);
        Tiers = [.. report.Ruleset.Tiers.Select((tier, i) => new TierView(tier, i == 0 ? null : report.Ruleset.Tiers[i - 1], report.Shading.Of(tier), [.. ranked[tier.Index]]))];
        NowhereWorse = Dominance.In([.. Cards.Where(card => card.Placement is not null).Select(card => card.Explained)]).ToLookup(pair => pair.Better.Row.Index);
        Widest = Math.Max(1, Cards.SelectMany(card => card.Bars).Select(bar => Math.Abs(bar.Points)).DefaultIfEmpty(1).Max());
    }

    /// <summary>The page it is part of.</summary>
    public ReportView Report { get; }

    /// <summary>The ranking.</summary>
    public TargetRanking Ranking { get; }

    /// <summary>Its scale.</summary>
    public Ruler Ruler { get; }

    /// <summary>Cards in rank order, then those of movements that are left out.</summary>
    public ImmutableArray<CardView> Cards { get; }

    /// <summary>Tiers, best first, empty ones too.</summary>
    public ImmutableArray<TierView> Tiers { get; }

    /// <summary>The largest part of any card, in points: bars of all cards share it as their scale.</summary>
    public double Widest { get; }

    /// <summary>By row: better placed movements that its own equals or beats on every criterion and award.</summary>
    public ILookup<int, DominanceFinding> NowhereWorse { get; }

    /// <summary>The target.</summary>
    public TargetDefinition Target => Ranking.Target;

    /// <summary>Anchor on the page.</summary>
    public string Id => "t" + Target.Index.ToString(CultureInfo.InvariantCulture);

    /// <summary>Name of the benchmark, or null.</summary>
    public string? Benchmark => Ranking.Benchmark?.Movement.Name;
}
