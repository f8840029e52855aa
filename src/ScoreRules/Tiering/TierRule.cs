using System.Collections.Immutable;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tiering;

/// <summary>Finds the tier of a value. A border belongs to the better tier.</summary>
internal sealed class TierRule(ImmutableArray<TierDefinition> tiers)
{
    // Borders as they are compared, worked out once for all movements.
    private readonly double[] borders = [.. tiers.Select(tier => Rounding.Compared(tier.Cut == TierCut.Score ? tier.Amount : tier.LowerBorder))];

    /// <summary>Whether a tier holds a share of the movements, so that the tier of one depends on the others.</summary>
    public bool DependsOnOthers { get; } = tiers.Any(tier => tier.Cut == TierCut.Top);

    /// <summary>The tier of one of a target's movements.</summary>
    /// <param name="score">Its score, as it is compared.</param>
    /// <param name="gap">Its gap to the benchmark, as it is compared.</param>
    /// <param name="better">How many movements stand strictly above it.</param>
    /// <param name="count">How many are ranked.</param>
    public TierDefinition Of(double score, double gap, int better, int count)
    {
        for (var i = 0; i < borders.Length; i++)
        {
            var inside = tiers[i].Cut switch
            {
                TierCut.Rest => true,
                TierCut.Top => better < Rounding.Compared(tiers[i].Amount * count),
                TierCut.Score => score >= borders[i],
                _ => gap >= borders[i],
            };
            if (inside)
            {
                return tiers[i];
            }
        }

        return tiers[^1];
    }

    /// <summary>Third of a closed tier, and the distance to its nearest border.</summary>
    public (TierPosition Position, double ToBorder) Inside(TierDefinition tier, double score, double gap)
    {
        if (tier.Cut == TierCut.Top || (tier.Cut == TierCut.Rest && tier.Index > 0 && tiers[tier.Index - 1].Cut == TierCut.Top))
        {
            return (TierPosition.Open, double.NaN);
        }

        var byScore = tiers[0].Cut == TierCut.Score;
        var value = byScore ? score : gap;
        var low = tier.LowerBorder;
        var high = tier.Index == 0 ? double.PositiveInfinity : tiers[tier.Index - 1].LowerBorder;
        var toBorder = Math.Min(Math.Abs(value - low), Math.Abs(high - value));
        if (double.IsInfinity(low) || double.IsInfinity(high))
        {
            return (TierPosition.Open, double.IsInfinity(toBorder) ? double.NaN : toBorder);
        }

        var share = (value - low) / (high - low);
        return (share >= 2.0 / 3 ? TierPosition.Upper : share >= 1.0 / 3 ? TierPosition.Middle : TierPosition.Lower, toBorder);
    }
}
