using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>What two houses say differently, as far as it can move a placement.</summary>
internal static class RuleChanges
{
    /// <summary>All changes, by block, then by name.</summary>
    public static ImmutableArray<RuleChange> Between(Judgement old, Judgement now)
    {
        var before = Items(old, now).ToLookup(item => item.Key, StringComparer.Ordinal);
        var after = Items(now, old).ToLookup(item => item.Key, StringComparer.Ordinal);
        return
        [
            .. before.Select(items => items.Key).Union(after.Select(items => items.Key), StringComparer.Ordinal)
                .SelectMany(key => Matched([.. before[key]], [.. after[key]]))
                .OrderBy(change => change.Block).ThenBy(change => change.Title, StringComparer.Ordinal).ThenBy(change => change.Old is null),
        ];
    }

    private static IEnumerable<ComparedItem> Items(Judgement judgement, Judgement other) =>
        RuleItems.Of(judgement.Ruleset).Concat(MovementItems.Of(judgement.Ruleset, judgement.Catalogue, name => other.Catalogue.Movements.Any(movement => NameText.Same(movement.Name, name))));

    // Of several things about one subject, such as ways to one called fact, those that say the same are taken away first.
    private static IEnumerable<RuleChange> Matched(List<ComparedItem> before, List<ComparedItem> after)
    {
        foreach (var item in before.ToList())
        {
            var same = after.FindIndex(other => other.Says == item.Says);
            if (same >= 0)
            {
                after.RemoveAt(same);
                before.Remove(item);
            }
        }

        return Enumerable.Range(0, Math.Max(before.Count, after.Count)).Select(position => Change(before.ElementAtOrDefault(position), after.ElementAtOrDefault(position)));
    }

    private static RuleChange Change(ComparedItem? before, ComparedItem? after)
    {
        var one = after ?? before!;
        return new RuleChange(one.Block, one.Title, before?.Location, after?.Location) { OldStatement = before?.Statement, NewStatement = after?.Statement, Movement = one.Movement };
    }
}
