using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A rule and the expectations that exercise it.</summary>
/// <param name="Kind">Its kind, in words.</param>
/// <param name="Placements">On how many placements it has its effect.</param>
/// <param name="By">The expectations that exercise it, as written; empty for none.</param>
/// <param name="Rule">The statement.</param>
public sealed record ExercisedPart(string Kind, int Placements, ImmutableArray<string> By, RulePart Rule);
