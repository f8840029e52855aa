using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Movements, and what a choice with them reaches.</summary>
/// <param name="Movements">Their names.</param>
/// <param name="Points">Points of the whole choice.</param>
/// <param name="Misses">Limits that it does not keep, in words.</param>
public sealed record ReachedPart(ImmutableArray<string> Movements, double Points, ImmutableArray<string> Misses);
