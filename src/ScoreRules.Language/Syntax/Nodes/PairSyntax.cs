namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>One measured quantity at another, such as 60 N at 0.5 m.</summary>
internal sealed record PairSyntax(QuantitySyntax Value, QuantitySyntax At);
