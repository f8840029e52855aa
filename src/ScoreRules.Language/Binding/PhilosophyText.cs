using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Prose of the author, printed with the rules under it.</summary>
/// <param name="Section">The section heading above it.</param>
/// <param name="Text">The prose, lines joined by blanks.</param>
/// <param name="Location">Where it stands.</param>
public sealed record PhilosophyText(string? Section, string Text, SourceLocation Location);
