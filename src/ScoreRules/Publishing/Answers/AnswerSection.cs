using System.Collections.Immutable;

namespace ScoreRules.Publishing.Answers;

/// <summary>An answer for one target, or for the house as a whole.</summary>
/// <param name="Target">The target; null for the house as a whole.</param>
/// <param name="Lead">The answer in one or two sentences.</param>
/// <param name="Lines">What stands behind it.</param>
internal sealed record AnswerSection(string? Target, string Lead, ImmutableArray<AnswerLine> Lines);
