using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Criteria: taken out, weight halved or doubled in all targets alike, worth turned round.</summary>
internal static class CriterionBreakages
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<CriterionDefinition>.Of(ruleset.Criteria, criteria => ruleset with { Criteria = criteria }).SelectMany(Of);

    private static IEnumerable<Breakage> Of(Slot<CriterionDefinition> slot)
    {
        var criterion = slot.Statement;
        yield return slot.Broken(BreakageKind.Deleted, null);
        yield return slot.Broken(BreakageKind.Halved, Weighing(criterion, 0.5));
        yield return slot.Broken(BreakageKind.Doubled, Weighing(criterion, 2));
        yield return slot.Broken(BreakageKind.Reversed, criterion with { Worth = TurnedRound(criterion.Worth) });
        foreach (var broken in ScopeBreakages.Of(slot, info => criterion with { Info = info }))
        {
            yield return broken;
        }
    }

    private static CriterionDefinition Weighing(CriterionDefinition criterion, double times) =>
        criterion with { Weights = [.. criterion.Weights.Select(weight => weight with { Amount = weight.Amount is { } amount ? Scaling.Of(amount, times) : null })] };

    // NaN, where the author said nothing about a word, stays.
    private static WorthFunction TurnedRound(WorthFunction worth) => worth with
    {
        Points = worth.Points.IsDefault ? worth.Points : [.. worth.Points.Select(point => (point.At, 1 - point.Worth))],
        ByCode = worth.ByCode.IsDefault ? worth.ByCode : [.. worth.ByCode.Select(of => 1 - of)],
    };
}
