namespace ScoreRules.Publishing.Json;

/// <summary>A number that mechanics used.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit; empty for none.</param>
/// <param name="Origin">stated, derived or assumed.</param>
public sealed record UsedPart(string Name, double Value, string Unit, string Origin);
