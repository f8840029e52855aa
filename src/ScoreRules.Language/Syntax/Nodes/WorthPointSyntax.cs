using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>What one value of an attribute is worth; a null operand means "the rest".</summary>
internal sealed record WorthPointSyntax(QuantitySyntax Worth, bool IsStep, OperandSyntax? At, SourceSpan Span);
