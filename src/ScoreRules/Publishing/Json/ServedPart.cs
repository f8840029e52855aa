namespace ScoreRules.Publishing.Json;

/// <summary>A part of what a choice is to serve.</summary>
/// <param name="Target">Its target.</param>
/// <param name="Part">What it is, in words.</param>
/// <param name="Share">Its share of all that is wanted, 0 to 1.</param>
public sealed record ServedPart(string Target, string Part, double Share);
