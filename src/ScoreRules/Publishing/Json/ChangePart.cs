namespace ScoreRules.Publishing.Json;

/// <summary>A rule or a fact that differs.</summary>
/// <param name="Block">The block it belongs to, in words.</param>
/// <param name="Title">What it is called.</param>
/// <param name="OldFile">The file of the old house; left out for what is added.</param>
/// <param name="OldLine">Its line.</param>
/// <param name="NewFile">The file of the new house; left out for what is taken out.</param>
/// <param name="NewLine">Its line.</param>
public sealed record ChangePart(string Block, string Title, string? OldFile, int? OldLine, string? NewFile, int? NewLine);
