namespace ScoreRules.Language.Syntax;

/// <summary>Something that would have fitted at a place in a line.</summary>
/// <param name="Words">What a message calls it: literal words, or a description such as "a number".</param>
/// <param name="Literal">Whether <paramref name="Words"/> are to be typed as they stand.</param>
internal readonly record struct Expectation(string Words, bool Literal);
