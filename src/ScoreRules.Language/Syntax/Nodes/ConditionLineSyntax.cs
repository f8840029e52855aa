using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>The demands of one line, joined all by "and" or all by "or".</summary>
internal sealed record ConditionLineSyntax(ImmutableArray<AtomSyntax> Atoms, bool AnyOf, SourceSpan Span);
