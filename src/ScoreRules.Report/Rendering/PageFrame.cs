namespace ScoreRules.Report.Rendering;

/// <summary>What stands round the body of a page.</summary>
/// <param name="Title">The title.</param>
/// <param name="Margin">What stands in the margin of every printed sheet, beside the page number.</param>
/// <param name="Styles">Style rules besides the colours.</param>
/// <param name="Script">The script; empty for a page without one.</param>
internal sealed record PageFrame(string Title, string Margin, string Styles, string Script = "");
