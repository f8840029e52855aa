using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>The rows that a statement is about.</summary>
internal sealed class RuleScope(FactTable facts)
{
    private readonly RowSet all = RowSet.All(facts.RowCount);
    private readonly RowSet none = RowSet.None(facts.RowCount);

    /// <summary>Whether a scope is that of a statement which limits nothing.</summary>
    public bool IsEverything(RowSet inScope) => ReferenceEquals(inScope, all);

    /// <summary>Rows in scope: those it is only for (all, if it does not say), less those it excepts.</summary>
    public (RowSet InScope, RowSet Excepted) Of(StatementInfo info, ImmutableArray<string> movements)
    {
        var only = info.OnlyFor.IsEmpty ? all : Rows(info.OnlyFor);
        var named = movements.IsEmpty ? only : only.And(RowSet.Of(facts.RowCount, movements.SelectMany(facts.RowsOf)));
        if (info.ExceptFor.IsEmpty)
        {
            return (named, none);
        }

        var excepted = Rows(info.ExceptFor);
        return (named.Without(excepted), excepted.And(named));
    }

    private static bool CoversAny(ImmutableArray<ScopeEntry> entries, TargetDefinition target) => entries.Any(entry => Covers(entry, target));

    private static bool Covers(ScopeEntry entry, TargetDefinition target) => entry.Target is { } named
        && (NameText.Same(named.Name, target.Name) || (target.Parent is not null && NameText.Same(named.Name, target.Parent)));

    // By target (a movement's target, or the target that it is part of) and by name of the movement.
    private RowSet Rows(ImmutableArray<ScopeEntry> entries)
    {
        var words = RowSet.WordsFor(facts.RowCount);
        var (target, covered) = ((TargetDefinition?)null, false);
        for (var row = 0; row < facts.RowCount; row++)
        {
            var next = facts.Rows[row].Target;
            (target, covered) = ReferenceEquals(next, target) ? (target, covered) : (next, CoversAny(entries, next));
            words[row >> 6] |= (covered ? 1UL : 0UL) << row;
        }

        foreach (var row in entries.Where(entry => entry.Target is null && entry.Movement is not null).SelectMany(entry => facts.RowsOf(entry.Movement!)))
        {
            words[row >> 6] |= 1UL << row;
        }

        return RowSet.FromWords(words, facts.RowCount);
    }
}
