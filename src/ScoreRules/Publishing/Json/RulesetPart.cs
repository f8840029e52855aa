using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>The house.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version.</param>
/// <param name="Judges">The outcome it judges.</param>
/// <param name="Checked">When it was checked, as year-month-day.</param>
/// <param name="BuildsOn">The houses it builds on, the base of all first.</param>
/// <param name="JudgedFor">The day it is judged for, as year-month-day; null where no date matters.</param>
public sealed record RulesetPart(string Name, string Version, string? Judges, string? Checked, ImmutableArray<BasePart> BuildsOn, string? JudgedFor);
