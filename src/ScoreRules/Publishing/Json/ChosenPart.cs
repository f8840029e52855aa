using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A movement chosen.</summary>
/// <param name="Movement">Its name.</param>
/// <param name="Adds">Points lost without it while the others stay.</param>
/// <param name="BestFor">The parts that it serves better than the others.</param>
/// <param name="NeededFor">Limits that would not be kept without it, in words.</param>
/// <param name="Instead">What can stand in for it, with the points of the whole choice then.</param>
public sealed record ChosenPart(string Movement, double Adds, ImmutableArray<ServedPart> BestFor, ImmutableArray<string> NeededFor, ImmutableArray<ReachedPart> Instead);
