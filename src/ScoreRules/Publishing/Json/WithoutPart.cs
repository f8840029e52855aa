namespace ScoreRules.Publishing.Json;

/// <summary>Where a movement would stand without any study.</summary>
/// <param name="Rank">Its rank.</param>
/// <param name="Tier">Its tier.</param>
/// <param name="Score">Its score on principle.</param>
/// <param name="Gap">Points above the benchmark; null without one.</param>
public sealed record WithoutPart(int Rank, string Tier, double Score, double? Gap);
