using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>What is left out: the rule taken out, its condition broken. Movements that are not there yet by their own date are left alone.</summary>
internal static class ExclusionBreakages
{
    private const string ByDate = "movement";

    /// <summary>All of them.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<ExclusionDefinition>.Of(ruleset.Exclusions, exclusions => ruleset with { Exclusions = exclusions })
            .Where(slot => slot.Statement.Info.Kind != ByDate).SelectMany(Of);

    private static IEnumerable<Breakage> Of(Slot<ExclusionDefinition> slot) =>
    [
        slot.Broken(BreakageKind.Deleted, null),
        .. ConditionBreakages.Of(slot, slot.Statement.Condition, condition => slot.Statement with { Condition = condition }),
        .. ScopeBreakages.Of(slot, info => slot.Statement with { Info = info }),
    ];
}
