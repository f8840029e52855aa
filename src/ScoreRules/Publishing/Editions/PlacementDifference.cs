using System.Collections.Immutable;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Editions;

/// <summary>What changed by the placements alone: it needs nothing but the rankings as they were published, so the editions may be of different versions of the program.</summary>
public sealed class PlacementDifference : IEditionDifference
{
    /// <inheritdoc/>
    public ImmutableArray<ListedChange> Between(PublishedEdition older, PublishedEdition newer)
    {
        var (before, after) = (Rows(older), Rows(newer));
        var targets = newer.Targets.Concat(older.Targets).Select(target => target.Name).Distinct(StringComparer.Ordinal).ToList();
        return
        [
            .. before.Keys.Union(after.Keys).OrderBy(key => targets.IndexOf(key.Target)).ThenBy(key => key.Movement, StringComparer.Ordinal)
                .Select(key => Change(key.Target, before.GetValueOrDefault(key), after.GetValueOrDefault(key))).OfType<ListedChange>(),
        ];
    }

    private static ListedChange? Change(string target, PublishedPlacement? before, PublishedPlacement? after) => Kind(before, after) is { } kind ? new ListedChange(target, kind, before, after) : null;

    private static ChangeKind? Kind(PublishedPlacement? before, PublishedPlacement? after) => (before, after) switch
    {
        (null, _) => ChangeKind.New,
        (_, null) => ChangeKind.Gone,
        ({ Tier: not null }, { Tier: null }) => ChangeKind.LeftOut,
        ({ Tier: null }, { Tier: not null }) => ChangeKind.TakenIn,
        _ when before.Tier != after.Tier => ChangeKind.OtherTier,
        _ when Rounding.Printed(before.Score, 1) != Rounding.Printed(after.Score, 1) => ChangeKind.OtherPoints,
        _ => null,
    };

    private static Dictionary<(string Target, string Movement), PublishedPlacement> Rows(PublishedEdition edition) =>
        edition.Targets.SelectMany(target => target.Placements.Select(row => (Key: (target.Name, row.Movement), Row: row))).DistinctBy(pair => pair.Key).ToDictionary(pair => pair.Key, pair => pair.Row);
}
