using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Ways in to called facts: taken out, their conditions broken.</summary>
internal static class CallBreakages
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<CallDefinition>.Of(ruleset.Calls, calls => ruleset with { Calls = calls }).SelectMany(Of);

    private static IEnumerable<Breakage> Of(Slot<CallDefinition> slot) =>
    [
        slot.Broken(BreakageKind.Deleted, null),
        .. ConditionBreakages.Of(slot, slot.Statement.Condition, condition => slot.Statement with { Condition = condition }),
        .. ScopeBreakages.Of(slot, info => slot.Statement with { Info = info }),
    ];
}
