using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>The rows that a statement is about.</summary>
internal sealed class RuleScope(ImmutableArray<PlacementRow> rows)
{
    /// <summary>Rows in scope: those it is only for (all, if it does not say), less those it excepts.</summary>
    public (RowSet InScope, RowSet Excepted) Of(StatementInfo info, ImmutableArray<string> movements)
    {
        var only = info.OnlyFor.IsEmpty ? RowSet.All(rows.Length) : Rows(info.OnlyFor);
        var excepted = Rows(info.ExceptFor);
        var named = movements.IsEmpty ? only : only.And(RowSet.Where(rows.Length, row => movements.Any(name => NameText.Same(name, rows[row].Movement.Name))));
        return (named.Without(excepted), excepted.And(named));
    }

    /// <summary>Whether an entry covers a row: its movement, its target, or the target that it is part of.</summary>
    public static bool Covers(ScopeEntry entry, PlacementRow row) =>
        entry.Target is { } target
            ? NameText.Same(target.Name, row.Target.Name) || (row.Target.Parent is not null && NameText.Same(target.Name, row.Target.Parent))
            : entry.Movement is not null && NameText.Same(entry.Movement, row.Movement.Name);

    private RowSet Rows(ImmutableArray<ScopeEntry> entries) =>
        entries.IsEmpty ? RowSet.None(rows.Length) : RowSet.Where(rows.Length, row => entries.Any(entry => Covers(entry, rows[row])));
}
