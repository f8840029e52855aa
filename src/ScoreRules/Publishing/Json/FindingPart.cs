using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A finding about a text.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Severity">error, warning or note.</param>
/// <param name="Headline">What is wrong.</param>
/// <param name="File">File of the place.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1, in UTF-16 units.</param>
/// <param name="Length">Length, in UTF-16 units.</param>
/// <param name="Within">The statement it sits in.</param>
/// <param name="Notes">Remarks.</param>
/// <param name="Suggestions">What would mend it.</param>
public sealed record FindingPart(
    string Code,
    string Severity,
    string Headline,
    string File,
    int Line,
    int Column,
    int Length,
    string? Within,
    ImmutableArray<string> Notes,
    ImmutableArray<SuggestionPart> Suggestions);
