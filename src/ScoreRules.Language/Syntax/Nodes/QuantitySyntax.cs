using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A number with its unit, if one is written.</summary>
internal sealed record QuantitySyntax(double Number, string? Unit, SourceSpan Span);
