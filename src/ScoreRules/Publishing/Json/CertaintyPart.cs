using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Where a movement lands when all that the authors admit is tried out.</summary>
/// <param name="Tries">How many tries were made.</param>
/// <param name="Tiers">By tier, best first: the share of tries that land there.</param>
/// <param name="Ranks">By rank, from the first: the share of tries.</param>
/// <param name="Low">The gap to the benchmark that 1 try in 10 falls below.</param>
/// <param name="High">The gap that 1 try in 10 exceeds.</param>
/// <param name="NotReallyDifferent">Movements that are ahead of it in 45 to 55 tries of 100.</param>
/// <param name="Text">The same in words.</param>
public sealed record CertaintyPart(int Tries, ImmutableArray<double> Tiers, ImmutableArray<double> Ranks, double Low, double High, ImmutableArray<string> NotReallyDifferent, string Text);
