using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>What became of one of the author's statements, row by row.</summary>
/// <param name="Statement">A call, or a statement that acts where a condition holds.</param>
/// <param name="Condition">Its condition, whatever its scope.</param>
/// <param name="InScope">Rows it is about.</param>
/// <param name="Exempt">Rows that it names and where its condition holds, but that it excepts.</param>
/// <param name="Overridden">Rows in scope where its condition holds, but where another statement has overridden it.</param>
public sealed record RuleOutcome(BoundStatement Statement, ThreeValuedSet Condition, RowSet InScope, RowSet Exempt, RowSet Overridden)
{
    /// <summary>Rows where it has its effect: in scope, held, not overridden.</summary>
    public RowSet Effective { get; } = Condition.Held.And(InScope).AndNot(Overridden);

    /// <summary>Rows in scope where its condition cannot be told.</summary>
    public RowSet CouldNotTell { get; } = Condition.CouldNotTell.And(InScope);
}
