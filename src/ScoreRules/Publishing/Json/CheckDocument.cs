using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Findings of one or more houses as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Errors">Number of errors.</param>
/// <param name="Warnings">Number of warnings.</param>
/// <param name="Findings">All findings by place.</param>
/// <param name="Changes">What was changed and dropped of the houses they build on.</param>
/// <param name="NotYetApplied">What was read and checked but has no effect yet.</param>
public sealed record CheckDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    int Errors,
    int Warnings,
    ImmutableArray<FindingPart> Findings,
    ImmutableArray<AmendmentPart> Changes,
    ImmutableArray<LaterPart> NotYetApplied);
