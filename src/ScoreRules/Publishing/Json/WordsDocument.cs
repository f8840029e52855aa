using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>The words that a house's text may use, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Inputs">Every file read, with its fingerprint.</param>
/// <param name="Words">The words, by kind, in the order of the house.</param>
public sealed record WordsDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart? Ruleset,
    ImmutableArray<InputPart> Inputs,
    ImmutableArray<WordPart> Words);
