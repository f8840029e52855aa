using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A statement of the house.</summary>
/// <param name="File">The file it stands in.</param>
/// <param name="Line">Its line, from 1.</param>
/// <param name="Title">What it is.</param>
/// <param name="Because">Why, in the author's words.</param>
/// <param name="Changes">What houses that build on this one changed about it; null when nothing.</param>
public sealed record RulePart(string File, int Line, string Title, string? Because, ImmutableArray<AmendmentPart>? Changes);
