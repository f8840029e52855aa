namespace ScoreRules.Publishing;

/// <summary>The page of one code.</summary>
/// <param name="Code">The code.</param>
/// <param name="Title">What it means, on one line.</param>
/// <param name="Text">The page, in Markdown.</param>
public sealed record DiagnosticPage(string Code, string Title, string Text);
