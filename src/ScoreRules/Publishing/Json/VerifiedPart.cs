using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Whether one published edition is what its rules say.</summary>
/// <param name="Folder">Its folder.</param>
/// <param name="MadeBy">Version of the program that made it; null where that cannot be read.</param>
/// <param name="Judged">Whether its rules were judged again; not where they were touched, or another version made it.</param>
/// <param name="Faults">What is wrong, each in a sentence; empty when it is proved.</param>
public sealed record VerifiedPart(string Folder, string? MadeBy, bool Judged, ImmutableArray<string> Faults);
