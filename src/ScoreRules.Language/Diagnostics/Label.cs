using ScoreRules.Language.Text;

namespace ScoreRules.Language.Diagnostics;

/// <summary>A short remark at a place in a text.</summary>
/// <param name="Location">The place.</param>
/// <param name="Text">A few words, may be empty.</param>
public sealed record Label(SourceLocation Location, string Text);
