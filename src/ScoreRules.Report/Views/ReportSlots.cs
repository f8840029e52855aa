using Microsoft.AspNetCore.Components;
using ScoreRules.Explanation;
using ScoreRules.Tiering;

namespace ScoreRules.Report.Views;

/// <summary>
/// Places on the page for what other analyses know. Each is asked for one movement or one target and answers null where it
/// has nothing to show; then nothing is shown, no heading either.
/// </summary>
public sealed record ReportSlots
{
    /// <summary>A page without any of them.</summary>
    public static ReportSlots None { get; } = new();

    /// <summary>The range of gaps, in points, in which 8 tries in 10 fall; drawn as a line through the dot on the ruler.</summary>
    public Func<Placement, (double Low, double High)?> Span { get; init; } = _ => null;

    /// <summary>On a list row: where a hundred tries land.</summary>
    public Func<Placement, RenderFragment?> RowCertainty { get; init; } = _ => null;

    /// <summary>On a card: how sure the placement is.</summary>
    public Func<PlacementExplanation, RenderFragment?> HowSure { get; init; } = _ => null;

    /// <summary>On a card: what would change the placement.</summary>
    public Func<PlacementExplanation, RenderFragment?> WhatWouldChangeIt { get; init; } = _ => null;

    /// <summary>On a card: the figure and the curves of load and muscle length.</summary>
    public Func<PlacementExplanation, RenderFragment?> Mechanics { get; init; } = _ => null;

    /// <summary>In the trail, at the step "mechanics": what was derived.</summary>
    public Func<PlacementExplanation, RenderFragment?> MechanicsStep { get; init; } = _ => null;
}
