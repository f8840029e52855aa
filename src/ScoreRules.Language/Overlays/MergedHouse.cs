using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>The statements of a house after those of the houses it builds on were changed as it says.</summary>
/// <param name="Statements">The statements to bind.</param>
/// <param name="Ledger">What was changed and dropped.</param>
/// <param name="IsComplete">Whether every house of the chain was found; otherwise nothing but the head of the house is left to bind.</param>
internal sealed record MergedHouse(IReadOnlyList<StatementSyntax> Statements, Ledger Ledger, bool IsComplete);
