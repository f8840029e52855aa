using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>One criterion is said to be so many times as important as another.</summary>
/// <param name="First">Declared name of the one.</param>
/// <param name="Second">Declared name of the other.</param>
/// <param name="Times">How many times, above 0.</param>
/// <param name="Word">The word of the house that says how many, such as "a little"; null for a number.</param>
/// <param name="Location">The line.</param>
public sealed record ImportanceComparison(string First, string Second, double Times, string? Word, SourceLocation Location);
