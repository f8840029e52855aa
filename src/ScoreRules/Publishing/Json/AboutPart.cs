using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A caution with the movements it is about.</summary>
/// <param name="Caution">The caution.</param>
/// <param name="Movements">The movements, by name.</param>
public sealed record AboutPart(CautionPart Caution, ImmutableArray<string> Movements);
