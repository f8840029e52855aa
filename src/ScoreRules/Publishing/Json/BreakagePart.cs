using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A breakage that moved a tier.</summary>
/// <param name="Text">What is broken, in words.</param>
/// <param name="File">The file of the statement.</param>
/// <param name="Line">Its line.</param>
/// <param name="Moves">The placements that moved, in words.</param>
/// <param name="NoticedBy">The expectations that noticed, as written; empty for none.</param>
public sealed record BreakagePart(string Text, string File, int Line, ImmutableArray<string> Moves, ImmutableArray<string> NoticedBy);
