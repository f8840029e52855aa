using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What a house changed or dropped of the house it builds on.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Dropped">Whether it was dropped; otherwise lines of it were changed or added.</param>
/// <param name="House">The house that changed it.</param>
/// <param name="BaseHouse">The house that declares it.</param>
/// <param name="Because">Why, in the author's words.</param>
/// <param name="File">The file of the change.</param>
/// <param name="Line">Its line.</param>
/// <param name="BaseFile">The file in which it is declared.</param>
/// <param name="BaseLine">The line there.</param>
/// <param name="Lines">The lines that differ.</param>
public sealed record AmendmentPart(
    string Title, bool Dropped, string House, string BaseHouse, string? Because, string File, int Line, string BaseFile, int BaseLine, ImmutableArray<AmendedLinePart> Lines);
