using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>Finds the rows that a statement is about: <c>only for</c>, <c>except for</c>, movements named one by one.</summary>
internal sealed class ScopeRows
{
    private readonly FactTable facts;
    private readonly RowSet none;
    // Made when a scope first asks for them: most rules are about every row.
    private readonly Lazy<ILookup<string, int>> byMovement;
    private readonly Lazy<ILookup<string, int>> byTarget;

    /// <summary>Reads the rows of a table.</summary>
    public ScopeRows(FactTable facts)
    {
        this.facts = facts;
        none = RowSet.None(facts.RowCount);
        byMovement = new(() => facts.Rows.ToLookup(row => NameText.Key(row.Movement.Name), row => row.Index, StringComparer.Ordinal));
        byTarget = new(() => facts.Rows.GroupBy(row => row.Target.Index)
            .SelectMany(rows => WithParents(rows.First().Target).SelectMany(_ => rows, (name, row) => (Name: name, row.Index)))
            .ToLookup(pair => pair.Name, pair => pair.Index, StringComparer.Ordinal));
    }

    /// <summary>Rows that a statement names, before exceptions: all, unless it says <c>only for</c> or names movements.</summary>
    public RowSet Named(BoundStatement statement)
    {
        var only = statement.Info.OnlyFor.IsEmpty ? facts.All : RowsOf(statement.Info.OnlyFor);
        return statement is ExclusionDefinition { Movements.IsEmpty: false } exclusion
            ? only.And(Set(exclusion.Movements.SelectMany(movement => byMovement.Value[NameText.Key(movement)])))
            : only;
    }

    /// <summary>Rows that a statement excepts.</summary>
    public RowSet Excepted(BoundStatement statement) => statement.Info.ExceptFor.IsEmpty ? none : RowsOf(statement.Info.ExceptFor);

    /// <summary>Rows that a statement is about: exceptions win.</summary>
    public RowSet InScope(BoundStatement statement) => Named(statement).AndNot(Excepted(statement));

    private RowSet RowsOf(ImmutableArray<ScopeEntry> entries) => Set(entries.SelectMany(RowsOf));

    private IEnumerable<int> RowsOf(ScopeEntry entry)
    {
        var ofTarget = entry.Target is { } target ? byTarget.Value[NameText.Key(target.Name)] : [];
        return entry.Movement is { } movement ? ofTarget.Concat(byMovement.Value[NameText.Key(movement)]) : ofTarget;
    }

    private RowSet Set(IEnumerable<int> rows) => RowSet.Of(facts.RowCount, rows);

    // Names of a target and of all that it is part of; a parent that nobody declared still counts by its name.
    private List<string> WithParents(TargetDefinition target)
    {
        var names = new List<string>();
        for (var name = NameText.Key(target.Name); name is not null && !names.Contains(name); name = ParentOf(name, target))
        {
            names.Add(name);
        }

        return names;
    }

    private string? ParentOf(string name, TargetDefinition start)
    {
        var target = NameText.Same(start.Name, name) ? start : facts.Targets.FirstOrDefault(target => NameText.Same(target.Name, name));
        return target?.Parent is { } parent ? NameText.Key(parent) : null;
    }
}
