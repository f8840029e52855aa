using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Report.Views;

/// <summary>A tier with the movements in it.</summary>
/// <param name="Tier">The tier.</param>
/// <param name="Better">The tier above it, or null.</param>
/// <param name="Shade">Style class of its depth of hue.</param>
/// <param name="Cards">Its movements, best first.</param>
public sealed record TierView(TierDefinition Tier, TierDefinition? Better, string Shade, ImmutableArray<CardView> Cards);
