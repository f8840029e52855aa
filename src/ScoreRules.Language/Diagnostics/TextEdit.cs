using ScoreRules.Language.Text;

namespace ScoreRules.Language.Diagnostics;

/// <summary>A replacement in a text.</summary>
/// <param name="Location">What is replaced; a span of length zero inserts.</param>
/// <param name="Replacement">What stands there afterwards.</param>
public sealed record TextEdit(SourceLocation Location, string Replacement);
