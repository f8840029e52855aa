using System.Collections.Immutable;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tiering;

/// <summary>Finds the tier of a value. A border belongs to the better tier.</summary>
internal sealed class TierRule(ImmutableArray<TierDefinition> tiers)
{
    /// <summary>The tier of one of a target's movements.</summary>
    /// <param name="score">Its score.</param>
    /// <param name="gap">Its gap to the benchmark.</param>
    /// <param name="better">How many movements stand strictly above it.</param>
    /// <param name="count">How many are ranked.</param>
    public TierDefinition Of(double score, double gap, int better, int count)
    {
        foreach (var tier in tiers)
        {
            var inside = tier.Cut switch
            {
                TierCut.Rest => true,
                TierCut.Top => better < Rounding.Compared(tier.Amount * count),
                TierCut.Score => Rounding.Compared(score) >= Rounding.Compared(tier.Amount),
                _ => Rounding.Compared(gap) >= Rounding.Compared(tier.LowerBorder),
            };
            if (inside)
            {
                return tier;
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
