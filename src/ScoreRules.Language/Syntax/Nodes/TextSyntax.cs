using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>Free text to the end of a line.</summary>
internal sealed record TextSyntax(string Text, SourceSpan Span);
