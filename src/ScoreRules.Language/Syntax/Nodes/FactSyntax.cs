using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A fact about a movement: <c>is</c> with one operand, or <c>has</c> with names (none for "nothing").</summary>
internal sealed record FactSyntax(NameSyntax Attribute, bool IsList, ImmutableArray<OperandSyntax> Operands, ImmutableArray<NameSyntax> Targets, SourceSpan Span);
