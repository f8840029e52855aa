using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What became of a house's expectations, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Inputs">Every file read, with its fingerprint.</param>
/// <param name="Held">How many expectations hold.</param>
/// <param name="Failed">How many fail.</param>
/// <param name="Expectations">All expectations in the order of the house; empty when an error stopped the ranking.</param>
/// <param name="Findings">Findings that fail the test besides expectations.</param>
/// <param name="Coverage">Rules and the expectations that exercise them; left out unless asked for.</param>
/// <param name="Breakages">What became of breakages; left out unless asked for.</param>
public sealed record TestDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart? Ruleset,
    ImmutableArray<InputPart> Inputs,
    int Held,
    int Failed,
    ImmutableArray<TestedPart> Expectations,
    ImmutableArray<FindingPart> Findings,
    ImmutableArray<ExercisedPart>? Coverage,
    BreakagesPart? Breakages);
