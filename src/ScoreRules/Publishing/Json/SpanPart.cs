namespace ScoreRules.Publishing.Json;

/// <summary>A stretch of the range, in the order of the lifting phase.</summary>
/// <param name="From">Where it begins, degrees.</param>
/// <param name="To">Where it ends, degrees.</param>
public sealed record SpanPart(double From, double To);
