namespace ScoreRules.Publishing.Json;

/// <summary>A limit that keeps a choice from being possible.</summary>
/// <param name="Limit">The limit, in words.</param>
/// <param name="Least">What it would have to be at least, in its own unit; null where that is no number.</param>
/// <param name="Unit">The unit, or null.</param>
public sealed record InTheWayPart(string Limit, double? Least, string? Unit);
