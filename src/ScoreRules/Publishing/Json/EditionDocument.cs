using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What a published edition is made of: its list of contents, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program that made it.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Edition">Twelve hexadecimal digits over all that went in: rule text and day.</param>
/// <param name="Date">The day of the edition as its authors give it, as year-month-day.</param>
/// <param name="DateIsTheHouses">Whether the house itself names that day; otherwise whoever published it did.</param>
/// <param name="WrittenBy">Its authors.</param>
/// <param name="CheckedBy">Who checked it.</param>
/// <param name="Files">Every file besides this one.</param>
public sealed record EditionDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart Ruleset,
    string Edition,
    string Date,
    bool DateIsTheHouses,
    string? WrittenBy,
    string? CheckedBy,
    ImmutableArray<EditionFilePart> Files);
