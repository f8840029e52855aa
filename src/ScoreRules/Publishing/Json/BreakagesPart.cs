using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What became of the breakages of a house.</summary>
/// <param name="Tried">How many were tried.</param>
/// <param name="Moved">How many moved a tier.</param>
/// <param name="Noticed">How many of those an expectation noticed.</param>
/// <param name="Score">Noticed as a share of moved, 0 to 1; null when none moved a tier.</param>
/// <param name="All">Every breakage that moved a tier.</param>
/// <param name="Pins">Expectations, as rule text, that would notice all that nothing noticed.</param>
/// <param name="PinsAreFewest">Whether it is proved that no fewer of this kind would do.</param>
public sealed record BreakagesPart(int Tried, int Moved, int Noticed, double? Score, ImmutableArray<BreakagePart> All, ImmutableArray<string> Pins, bool PinsAreFewest);
