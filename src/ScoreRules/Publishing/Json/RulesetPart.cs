namespace ScoreRules.Publishing.Json;

/// <summary>The house.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version.</param>
/// <param name="Judges">The outcome it judges.</param>
/// <param name="Checked">When it was checked, as year-month-day.</param>
public sealed record RulesetPart(string Name, string Version, string? Judges, string? Checked);
