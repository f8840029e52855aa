using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Borders of tiers, moved by half of the narrower tier beside them, so that the tiers keep their order.</summary>
internal static class TierBreakages
{
    // Where a border has no other beside it, in points.
    private const double Alone = 2;

    /// <summary>Two for each border.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset)
    {
        foreach (var tier in ruleset.Tiers.Where(tier => tier.Cut != TierCut.Rest))
        {
            // In the direction of better; an amount counts that way for some cuts and the other way for the rest.
            var (up, down) = (UpOf(tier), StepOf(tier, ruleset) / 2);
            yield return Moved(ruleset, tier, BreakageKind.MovedUp, up * down);
            yield return Moved(ruleset, tier, BreakageKind.MovedDown, -up * down);
        }
    }

    private static Breakage Moved(BoundRuleset ruleset, TierDefinition tier, BreakageKind kind, double by) =>
        new(kind, $"tier \"{tier.Name}\"", tier.Location, ruleset with { Tiers = ruleset.Tiers.SetItem(tier.Index, tier with { Amount = tier.Amount + by }) });

    private static int UpOf(TierDefinition tier) => tier.Cut is TierCut.Above or TierCut.Score ? 1 : -1;

    private static double StepOf(TierDefinition tier, BoundRuleset ruleset)
    {
        var border = BorderOf(tier);
        var beside = ruleset.Tiers.Where(other => Math.Abs(other.Index - tier.Index) == 1 && other.Cut != TierCut.Rest).Select(BorderOf);
        var ends = tier.Cut == TierCut.Top ? beside.Append(1).Concat(tier.Index == 0 ? [0] : []) : beside;
        return ends.Select(other => Math.Abs(other - border)).Where(width => width > 0).DefaultIfEmpty(2 * Alone).Min();
    }

    private static double BorderOf(TierDefinition tier) => tier.Cut == TierCut.Top ? tier.Amount : tier.LowerBorder;
}
