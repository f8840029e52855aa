namespace ScoreRules.Publishing.Json;

/// <summary>A derived fact.</summary>
/// <param name="Fact">Its name.</param>
/// <param name="Muscle">The muscle it is about; null for the target as a whole.</param>
/// <param name="Value">The value, parts and lengths 0 to 1; null when it cannot be worked out.</param>
/// <param name="Low">Lowest value when one input is off; null without an interval.</param>
/// <param name="High">Highest value when one input is off; null without an interval.</param>
/// <param name="Unit">Its unit; empty for none.</param>
/// <param name="Grade">A, B or C, of the least reliable muscle; null for facts without muscles.</param>
/// <param name="Source">derived; derived, even load assumed; or not computable.</param>
public sealed record DerivedFactPart(string Fact, string? Muscle, double? Value, double? Low, double? High, string Unit, string? Grade, string Source);
