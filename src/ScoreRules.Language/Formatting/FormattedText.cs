namespace ScoreRules.Language.Formatting;

/// <summary>A text in its canonical layout.</summary>
/// <param name="Text">The whole text.</param>
/// <param name="Untouched">Stretches that were left byte for byte as they were, because something in them cannot be read.</param>
public sealed record FormattedText(string Text, int Untouched);
