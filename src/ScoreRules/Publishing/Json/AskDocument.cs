using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Answers to questions about a house, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Profile">The profile it is judged for, or null.</param>
/// <param name="Inputs">Every file read, with its fingerprint.</param>
/// <param name="Answers">One answer a question, in the order of the questions.</param>
public sealed record AskDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart? Ruleset,
    string? Profile,
    ImmutableArray<InputPart> Inputs,
    ImmutableArray<AnswerPart> Answers);
