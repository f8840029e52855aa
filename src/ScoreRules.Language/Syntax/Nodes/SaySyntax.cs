namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>What a word of the house means in numbers.</summary>
internal sealed record SaySyntax(NameSyntax Word, SayBound Bound, ValueSyntax Value);
