using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Caps and floors: taken out, a cap for a floor and back, a tier higher or lower, their conditions broken.</summary>
internal static class LimitBreakages
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<LimitDefinition>.Of(ruleset.Limits, limits => ruleset with { Limits = limits }).SelectMany(slot => Of(slot, ruleset));

    private static IEnumerable<Breakage> Of(Slot<LimitDefinition> slot, BoundRuleset ruleset)
    {
        var limit = slot.Statement;
        return
        [
            slot.Broken(BreakageKind.Deleted, null),
            slot.Broken(BreakageKind.Reversed, limit with { IsCap = !limit.IsCap }),
            .. Moved(slot, ruleset, BreakageKind.MovedUp, limit.Tier.Index - 1),
            .. Moved(slot, ruleset, BreakageKind.MovedDown, limit.Tier.Index + 1),
            .. ConditionBreakages.Of(slot, limit.Condition, condition => limit with { Condition = condition }),
            .. ScopeBreakages.Of(slot, info => limit with { Info = info }),
        ];
    }

    private static IEnumerable<Breakage> Moved(Slot<LimitDefinition> slot, BoundRuleset ruleset, BreakageKind kind, int tier) =>
        tier >= 0 && tier < ruleset.Tiers.Length ? [slot.Broken(kind, slot.Statement with { Tier = ruleset.Tiers[tier] })] : [];
}
