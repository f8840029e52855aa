namespace ScoreRules.Publishing.Json;

/// <summary>One line of an answer.</summary>
/// <param name="Label">What kind of line it is; the same as in the line above where that repeats.</param>
/// <param name="Text">The sentence.</param>
/// <param name="Depth">0 for a line of its own, 1 and more for what stands behind the line above.</param>
/// <param name="Figures">Its names and numbers.</param>
public sealed record AnswerLinePart(string Label, string Text, int Depth, FiguresPart Figures);
