using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Rankings as JSON. Points are unrounded.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Profile">The profile it was judged for.</param>
/// <param name="Inputs">Every file read, with its fingerprint.</param>
/// <param name="Cautions">Cautions for the whole page: above the ranking and at the foot.</param>
/// <param name="Targets">The rankings.</param>
/// <param name="NotCounted">Studies that move nothing, with the reason.</param>
/// <param name="Expectations">What became of the house's expectations.</param>
/// <param name="Errors">Errors despite which the ranking was made; what they are about is left out of account.</param>
/// <param name="Changes">What was changed and dropped of the houses it builds on.</param>
/// <param name="NotInForce">Statements that are not in force on the day it is judged for.</param>
/// <param name="NotYetApplied">What was read and checked but has no effect yet.</param>
public sealed record RankDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart? Ruleset,
    string? Profile,
    ImmutableArray<InputPart> Inputs,
    ImmutableArray<CautionPart> Cautions,
    ImmutableArray<TargetPart> Targets,
    ImmutableArray<NotCountedPart> NotCounted,
    ImmutableArray<ExpectationPart> Expectations,
    ImmutableArray<FindingPart> Errors,
    ImmutableArray<AmendmentPart> Changes,
    ImmutableArray<RulePart> NotInForce,
    ImmutableArray<LaterPart> NotYetApplied);
