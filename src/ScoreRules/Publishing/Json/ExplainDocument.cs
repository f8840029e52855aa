using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Explanations of one movement as JSON: one for each target that ranks it or leaves it out.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Inputs">Every file read, with its fingerprint.</param>
/// <param name="Movement">The movement.</param>
/// <param name="Targets">Each target with the one placement, or the one movement left out.</param>
public sealed record ExplainDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart? Ruleset,
    ImmutableArray<InputPart> Inputs,
    string Movement,
    ImmutableArray<TargetPart> Targets);
