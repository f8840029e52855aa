namespace ScoreRules.Publishing.Json;

/// <summary>A statement of the house.</summary>
/// <param name="File">The file it stands in.</param>
/// <param name="Line">Its line, from 1.</param>
/// <param name="Title">What it is.</param>
/// <param name="Because">Why, in the author's words.</param>
public sealed record RulePart(string File, int Line, string Title, string? Because);
