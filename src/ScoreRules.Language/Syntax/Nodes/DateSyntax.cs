using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A day as written; whether it exists is checked when binding.</summary>
internal sealed record DateSyntax(string Day, string Month, string Year, SourceSpan Span);
