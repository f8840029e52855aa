using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A placement that changed.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="Change">"other tier", "same tier", "new", "gone", "now left out" or "no longer left out".</param>
/// <param name="Old">Where it stood; left out where it was not ranked.</param>
/// <param name="New">Where it stands; left out where it is not ranked.</param>
/// <param name="Parts">What each block contributes; each figure sums to the whole. Empty where the move cannot be divided.</param>
public sealed record PlacementChangePart(string Movement, string Change, StandingPart? Old, StandingPart? New, ImmutableArray<BlockPartPart> Parts);
