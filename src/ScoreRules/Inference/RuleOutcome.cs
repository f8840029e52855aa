using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>What became of one statement, for every row.</summary>
/// <param name="Statement">The statement.</param>
/// <param name="Condition">Its condition alone.</param>
/// <param name="InScope">Rows that it is about (<c>only for</c>, <c>except for</c>, movements named).</param>
/// <param name="Exempt">Rows where its condition holds but which it excepts.</param>
/// <param name="Overridden">Rows where it would act but another statement overrides it.</param>
/// <param name="Effective">Rows where it acts.</param>
/// <param name="CouldNotTell">Rows that it is about where its condition cannot be told.</param>
public sealed record RuleOutcome(
    BoundStatement Statement,
    ThreeValuedSet Condition,
    RowSet InScope,
    RowSet Exempt,
    RowSet Overridden,
    RowSet Effective,
    RowSet CouldNotTell);
