namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A joint angle that is kept (no end) or moved through.</summary>
internal sealed record AngleSyntax(NameSyntax Joint, QuantitySyntax Start, QuantitySyntax? End);
