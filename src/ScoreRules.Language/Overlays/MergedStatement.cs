using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>A statement after a change.</summary>
/// <param name="Statement">The statement.</param>
/// <param name="Lines">What differs, by line.</param>
internal sealed record MergedStatement(StatementSyntax Statement, ImmutableArray<AmendedLine> Lines);
