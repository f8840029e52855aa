using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Points given and taken: left out, halved, doubled, the other way round, their conditions broken.</summary>
internal static class AwardBreakages
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<AwardDefinition>.Of(ruleset.Awards, awards => ruleset with { Awards = awards }).SelectMany(Of);

    private static IEnumerable<Breakage> Of(Slot<AwardDefinition> slot)
    {
        var award = slot.Statement;
        return
        [
            slot.Broken(BreakageKind.Deleted, null),
            slot.Broken(BreakageKind.Halved, award with { Amount = Scaling.Of(award.Amount, 0.5) }),
            slot.Broken(BreakageKind.Doubled, award with { Amount = Scaling.Of(award.Amount, 2) }),
            slot.Broken(BreakageKind.Reversed, award with { Amount = award.Amount.Negated }),
            .. ConditionBreakages.Of(slot, award.Condition, condition => award with { Condition = condition }),
            .. ScopeBreakages.Of(slot, info => award with { Info = info }),
        ];
    }
}
