using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>A parsed line of a statement.</summary>
/// <param name="Spec">Its kind.</param>
/// <param name="Span">From its first word to its last.</param>
internal abstract record ClauseSyntax(ClauseSpec Spec, SourceSpan Span);

/// <summary>A parsed line with what it says.</summary>
internal sealed record ClauseSyntax<T>(ClauseSpec Spec, SourceSpan Span, T Content) : ClauseSyntax(Spec, Span);
