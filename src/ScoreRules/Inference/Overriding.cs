using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>
/// Finds where statements override one another: only those of one kind of effect, only where both hold, and only by a
/// statement that is not itself overridden there. A caution is never overridden.
/// </summary>
internal sealed class Overriding
{
    private readonly ILookup<(Type Kind, string Name), ConditionalStatement> overriders;
    private readonly Func<ConditionalStatement, RowSet> heldInScope;
    private readonly Dictionary<BoundStatement, RowSet> overridden = new(ReferenceEqualityComparer.Instance);
    private readonly List<BoundStatement> waiting = [];

    /// <summary>Sorts the statements by what they override.</summary>
    /// <param name="statements">All statements that act.</param>
    /// <param name="heldInScope">The rows in scope where a statement's condition holds.</param>
    public Overriding(ImmutableArray<ConditionalStatement> statements, Func<ConditionalStatement, RowSet> heldInScope)
    {
        this.heldInScope = heldInScope;
        overriders = statements.SelectMany(statement => statement.Info.Overrides, (statement, name) => (statement, name))
            .ToLookup(pair => (pair.statement.GetType(), NameText.Key(pair.name)), pair => pair.statement);
    }

    /// <summary>Rows in scope where a statement's condition holds but another has overridden it.</summary>
    public RowSet RowsOf(ConditionalStatement statement)
    {
        if (!overridden.TryGetValue(statement, out var rows))
        {
            overridden[statement] = rows = Find(statement);
        }

        return rows;
    }

    private RowSet Find(ConditionalStatement statement)
    {
        RefuseCircle(statement);
        waiting.Add(statement);
        var held = heldInScope(statement);
        var rows = OverridersOf(statement)
            .Aggregate(RowSet.None(held.Size), (found, other) => found.Or(heldInScope(other).AndNot(RowsOf(other))))
            .And(held);
        waiting.RemoveAt(waiting.Count - 1);
        return rows;
    }

    private IEnumerable<ConditionalStatement> OverridersOf(ConditionalStatement statement) =>
        statement is CautionDefinition || statement.Info.Name is not { } name
            ? []
            : overriders[(statement.GetType(), NameText.Key(name))].Where(other => !ReferenceEquals(other, statement));

    private void RefuseCircle(ConditionalStatement statement)
    {
        var start = waiting.FindIndex(before => ReferenceEquals(before, statement));
        if (start >= 0)
        {
            throw InferenceException.Circle("override", waiting[start..].Select(before => before.Info));
        }
    }
}
