using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Language.Binding;

namespace ScoreRules.Report.Views;

/// <summary>Depth of hue of tiers: evenly spaced steps from the darkest for the best to the palest for the last.</summary>
public sealed class TierShading(ImmutableArray<TierDefinition> tiers)
{
    private const int Steps = 5;

    /// <summary>The style class of a tier.</summary>
    public string Of(TierDefinition tier) => $"k{Step(tier.Index).ToString(CultureInfo.InvariantCulture)}";

    private int Step(int index) => tiers.Length < 2 ? 1 : 1 + (int)Math.Round((double)index * (Steps - 1) / (tiers.Length - 1), MidpointRounding.AwayFromZero);
}
