using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>The rows that a statement is about.</summary>
internal sealed class RuleScope(ImmutableArray<PlacementRow> rows, ImmutableArray<TargetDefinition> targets)
{
    private readonly Dictionary<string, HashSet<string>> namesOf = targets.ToDictionary(target => target.Name, target => NamesOf(target, targets), StringComparer.Ordinal);

    /// <summary>Rows in scope: those it is only for (all, if it does not say), less those it excepts.</summary>
    public (RowSet InScope, RowSet Excepted) Of(StatementInfo info, ImmutableArray<string> movements)
    {
        var only = info.OnlyFor.IsEmpty ? RowSet.All(rows.Length) : Rows(info.OnlyFor);
        var excepted = Rows(info.ExceptFor);
        var named = movements.IsEmpty ? only : only.And(RowSet.Where(rows.Length, row => movements.Any(name => NameText.Same(name, rows[row].Movement.Name))));
        return (named.Without(excepted), excepted.And(named));
    }

    // A target's own name and those of the targets that it is part of.
    private static HashSet<string> NamesOf(TargetDefinition target, ImmutableArray<TargetDefinition> targets)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (var at = target; at is not null && names.Add(NameText.Key(at.Name));)
        {
            var parent = at.Parent;
            at = parent is null ? null : targets.FirstOrDefault(other => NameText.Same(other.Name, parent));
        }

        return names;
    }

    private RowSet Rows(ScopeEntry entry)
    {
        var key = NameText.Key(entry.Target?.Name ?? entry.Movement ?? "");
        return entry.Target is null
            ? RowSet.Where(rows.Length, row => NameText.Key(rows[row].Movement.Name) == key)
            : RowSet.Where(rows.Length, row => namesOf[rows[row].Target.Name].Contains(key));
    }

    private RowSet Rows(ImmutableArray<ScopeEntry> entries) =>
        entries.Aggregate(RowSet.None(rows.Length), (all, entry) => all.Or(Rows(entry)));
}
