using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Choices of a few movements, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Inputs">Every file read, with its fingerprint.</param>
/// <param name="Choices">One a request, in the order of the requests.</param>
public sealed record ChooseDocument(int SchemaVersion, string Tool, string Notice, RulesetPart? Ruleset, ImmutableArray<InputPart> Inputs, ImmutableArray<ChoicePart> Choices);
