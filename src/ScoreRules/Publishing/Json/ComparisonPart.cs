using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Two movements side by side in one target. Points are unrounded.</summary>
/// <param name="Target">The target.</param>
/// <param name="First">One movement.</param>
/// <param name="Second">The other; the benchmark where the claim names no other.</param>
/// <param name="FirstScore">Score of the first before evidence.</param>
/// <param name="SecondScore">Score of the second before evidence.</param>
/// <param name="Parts">All that gave points to either; the parts add up to the scores.</param>
public sealed record ComparisonPart(string Target, string First, string Second, double FirstScore, double SecondScore, ImmutableArray<ComparedPart> Parts);
