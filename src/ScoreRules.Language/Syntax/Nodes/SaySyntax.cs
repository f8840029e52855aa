namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>What a word of the house means in numbers.</summary>
/// <param name="Word">The word.</param>
/// <param name="Bound">Whether the number is a bound or the amount itself.</param>
/// <param name="Value">The number.</param>
/// <param name="IsImportance">Whether "as important" follows, which makes a number of times read aloud.</param>
internal sealed record SaySyntax(NameSyntax Word, SayBound Bound, ValueSyntax Value, bool IsImportance);
