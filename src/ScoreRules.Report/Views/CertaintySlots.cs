using Microsoft.AspNetCore.Components;
using ScoreRules.Certainty;
using ScoreRules.Language.Binding;
using ScoreRules.Report.Components;
using ScoreRules.Tiering;

namespace ScoreRules.Report.Views;

/// <summary>Fills the places on the page that tell how sure placements are.</summary>
internal static class CertaintySlots
{
    /// <summary>The slots with spans, bars and sentences; a benchmark has none, its gap is always zero.</summary>
    public static ReportSlots Over(ReportSlots slots, HouseCertainty certainty, BoundRuleset ruleset)
    {
        PlacementCertainty? Find(Placement placement) => placement.IsBenchmark ? null : certainty.Of(placement.Row.Target)?.Of(placement.Row.Movement);
        return slots with
        {
            Span = placement => Find(placement) is { } sure ? (sure.Low, sure.High) : null,
            RowCertainty = placement => Find(placement) is { } sure ? Row(sure) : null,
            HowSure = explained => explained.Placement is { } placement && Find(placement) is { } sure ? Card(sure, certainty.Of(placement.Row.Target)!, ruleset) : null,
        };
    }

    private static RenderFragment Row(PlacementCertainty sure) => builder =>
    {
        builder.OpenComponent<RowCertainty>(0);
        builder.AddComponentParameter(1, nameof(RowCertainty.Certainty), sure);
        builder.CloseComponent();
    };

    private static RenderFragment Card(PlacementCertainty sure, TargetCertainty target, BoundRuleset ruleset) => builder =>
    {
        builder.OpenComponent<HowSure>(0);
        builder.AddComponentParameter(1, nameof(HowSure.Certainty), sure);
        builder.AddComponentParameter(2, nameof(HowSure.Target), target);
        builder.AddComponentParameter(3, nameof(HowSure.Ruleset), ruleset);
        builder.CloseComponent();
    };
}
