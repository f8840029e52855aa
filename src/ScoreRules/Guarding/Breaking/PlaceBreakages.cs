using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Personal judgements: taken out, or the other way round.</summary>
internal static class PlaceBreakages
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<PlaceDefinition>.Of(ruleset.Places, places => ruleset with { Places = places }).SelectMany(Of);

    private static IEnumerable<Breakage> Of(Slot<PlaceDefinition> slot)
    {
        yield return slot.Broken(BreakageKind.Deleted, null);
        var other = Opposite(slot.Statement.Kind);
        if (other != slot.Statement.Kind)
        {
            yield return slot.Broken(BreakageKind.Reversed, slot.Statement with { Kind = other });
        }

        foreach (var broken in ScopeBreakages.Of(slot, info => slot.Statement with { Info = info }))
        {
            yield return broken;
        }
    }

    private static PlaceKind Opposite(PlaceKind kind) => kind switch
    {
        PlaceKind.OneTierHigher => PlaceKind.OneTierLower,
        PlaceKind.OneTierLower => PlaceKind.OneTierHigher,
        PlaceKind.JustAbove => PlaceKind.JustBelow,
        PlaceKind.JustBelow => PlaceKind.JustAbove,
        _ => kind,
    };
}
