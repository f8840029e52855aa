using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>One demand of a condition: a called fact, or a comparison of an attribute.</summary>
/// <param name="Subject">The called fact or the attribute.</param>
/// <param name="Comparison">The comparison; <see cref="Comparison.Called"/> for a called fact.</param>
/// <param name="Operands">What it is compared with.</param>
/// <param name="OpensList">Whether a list was opened ("any of"), which then runs to the end of the line.</param>
/// <param name="Span">The whole demand.</param>
internal sealed record AtomSyntax(NameSyntax Subject, Comparison Comparison, ImmutableArray<OperandSyntax> Operands, bool OpensList, SourceSpan Span);
