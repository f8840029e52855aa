using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tiering;

/// <summary>Rules of one kind with the rows where they act, so that most rows are answered by one look.</summary>
internal sealed class EffectiveRules<T>
    where T : ConditionalStatement
{
    private readonly ImmutableArray<(T Rule, RowSet Rows)> rules;
    private readonly RowSet any;

    /// <summary>Looks up where the rules act.</summary>
    public EffectiveRules(ImmutableArray<T> rules, InferenceResult inferred)
    {
        this.rules = [.. rules.Select(rule => (rule, inferred.Outcome(rule).Effective))];
        any = this.rules.Aggregate(RowSet.None(inferred.Facts.RowCount), (all, one) => all.Or(one.Rows));
    }

    /// <summary>Whether any of the rules acts on a row.</summary>
    public bool AnyAt(int row) => any.Contains(row);

    /// <summary>The rules that act on a row, in their order.</summary>
    public ImmutableArray<T> At(int row) => AnyAt(row) ? [.. rules.Where(pair => pair.Rows.Contains(row)).Select(pair => pair.Rule)] : [];
}
