namespace ScoreRules.Publishing.Json;

/// <summary>A movement that is left out.</summary>
/// <param name="Movement">Its name.</param>
/// <param name="Reason">Why.</param>
/// <param name="Score">The score it keeps.</param>
/// <param name="Rule">The rule that leaves it out.</param>
public sealed record LeftOutPart(string Movement, string Reason, double Score, RulePart Rule);
