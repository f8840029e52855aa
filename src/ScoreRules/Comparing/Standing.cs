namespace ScoreRules.Comparing;

/// <summary>Where a movement stands in a target, in numbers. One that is left out stands behind all that are ranked, below the last tier.</summary>
/// <param name="Gap">Points above (or, negative, below) the benchmark.</param>
/// <param name="Rank">Rank from 1.</param>
/// <param name="Tier">Position of its tier, 0 for the best.</param>
internal readonly record struct Standing(double Gap, double Rank, double Tier);
