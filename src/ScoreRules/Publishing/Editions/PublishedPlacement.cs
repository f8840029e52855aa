namespace ScoreRules.Publishing.Editions;

/// <summary>A movement in a published ranking.</summary>
/// <param name="Movement">Its name.</param>
/// <param name="Tier">Its tier; null when it is left out.</param>
/// <param name="Rank">Its rank; null when it is left out.</param>
/// <param name="Score">Its score in points.</param>
public sealed record PublishedPlacement(string Movement, string? Tier, int? Rank, double Score);
