namespace ScoreRules.Publishing.Json;

/// <summary>Where a movement stands.</summary>
/// <param name="Rank">Its rank.</param>
/// <param name="Tier">Its tier.</param>
/// <param name="Gap">Points above (or, negative, below) the benchmark.</param>
public sealed record StandingPart(int Rank, string Tier, double? Gap);
