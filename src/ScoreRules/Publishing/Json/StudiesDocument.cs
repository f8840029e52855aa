using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Studies against principles as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Totals">All targets together.</param>
/// <param name="Claims">What each study says in each target, beside the principles.</param>
/// <param name="NotCounted">Studies that move nothing, with the reason.</param>
public sealed record StudiesDocument(int SchemaVersion, string Tool, string Notice, RulesetPart? Ruleset, StudyTotals Totals, ImmutableArray<MarkedPart> Claims, ImmutableArray<NotCountedPart> NotCounted);
