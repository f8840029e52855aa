namespace ScoreRules.Publishing.Json;

/// <summary>A line that a house says in place of one of the house it builds on.</summary>
/// <param name="Says">What it says now.</param>
/// <param name="File">The file in which it says so.</param>
/// <param name="Line">The line.</param>
/// <param name="Said">What stood there before; null when nothing did.</param>
/// <param name="SaidIn">The file in which that stands.</param>
/// <param name="SaidAt">The line in that file.</param>
public sealed record AmendedLinePart(string Says, string File, int Line, string? Said, string? SaidIn, int? SaidAt);
