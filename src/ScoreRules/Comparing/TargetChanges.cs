using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Comparing;

/// <summary>What changed in the list of one target.</summary>
internal static class TargetChanges
{
    /// <summary>All changes: those ranked now in the order of the new list, then those left out, then those gone, by name.</summary>
    public static IEnumerable<PlacementChange> Between(TargetRanking old, TargetRanking now)
    {
        var (before, after) = (Rows(old), Rows(now));
        var ranked = now.Placements.Select(placement => Change(before, after, placement.Row.Movement.Name));
        var left = now.LeftOut.Select(row => Change(before, after, row.Row.Movement.Name));
        var gone = before.Keys.Where(key => !after.ContainsKey(key)).Order(StringComparer.Ordinal).Select(key => Change(before, after, key));
        return ranked.Concat(left).Concat(gone).OfType<PlacementChange>();
    }

    private static Dictionary<string, (Placement? Ranked, LeftOutRow? LeftOut)> Rows(TargetRanking ranking) =>
        ranking.Placements.Select(placement => (placement.Row, Ranked: (Placement?)placement, LeftOut: (LeftOutRow?)null))
            .Concat(ranking.LeftOut.Select(row => (row.Row, Ranked: (Placement?)null, LeftOut: (LeftOutRow?)row)))
            .ToDictionary(one => NameText.Key(one.Row.Movement.Name), one => (one.Ranked, one.LeftOut), StringComparer.Ordinal);

    private static PlacementChange? Change(
        Dictionary<string, (Placement? Ranked, LeftOutRow? LeftOut)> before, Dictionary<string, (Placement? Ranked, LeftOutRow? LeftOut)> after, string name)
    {
        var (old, now) = (before.GetValueOrDefault(NameText.Key(name)), after.GetValueOrDefault(NameText.Key(name)));
        return KindOf(old, now) is { } kind
            ? new PlacementChange(NameOf(now) ?? NameOf(old)!, kind, old.Ranked, now.Ranked) { OldLeftOut = old.LeftOut, NewLeftOut = now.LeftOut }
            : null;
    }

    private static PlacementChangeKind? KindOf((Placement? Ranked, LeftOutRow? LeftOut) old, (Placement? Ranked, LeftOutRow? LeftOut) now) => (old, now) switch
    {
        ((null, null), _) => PlacementChangeKind.New,
        (_, (null, null)) => PlacementChangeKind.Gone,
        ((null, not null), (not null, null)) => PlacementChangeKind.NowRanked,
        ((not null, null), (null, not null)) => PlacementChangeKind.NowLeftOut,
        ((null, not null), (null, not null)) => null,
        _ when old.Ranked!.Tier.Index != now.Ranked!.Tier.Index => PlacementChangeKind.OtherTier,
        _ => Same(old.Ranked!, now.Ranked!) ? null : PlacementChangeKind.SameTier,
    };

    private static bool Same(Placement old, Placement now) => old.Rank == now.Rank && Rounding.Compared(old.Gap).Equals(Rounding.Compared(now.Gap));

    private static string? NameOf((Placement? Ranked, LeftOutRow? LeftOut) row) => (row.Ranked?.Row ?? row.LeftOut?.Row)?.Movement.Name;
}
