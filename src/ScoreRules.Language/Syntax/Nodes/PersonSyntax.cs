namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>The person whose body mechanics assumes.</summary>
internal sealed record PersonSyntax(QuantitySyntax Mass, QuantitySyntax Stature, NameSyntax Sex);
