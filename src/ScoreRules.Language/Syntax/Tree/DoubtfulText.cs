namespace ScoreRules.Language.Syntax.Tree;

/// <summary>A text that could not be read and may declare a name.</summary>
/// <param name="Kind">Head of the statement it stands in, such as "target".</param>
/// <param name="Text">The text; empty when the name itself is missing.</param>
internal sealed record DoubtfulText(string Kind, string Text);
