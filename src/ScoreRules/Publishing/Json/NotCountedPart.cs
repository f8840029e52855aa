namespace ScoreRules.Publishing.Json;

/// <summary>A study that moves nothing.</summary>
/// <param name="Study">The study.</param>
/// <param name="Reason">Why, in words.</param>
/// <param name="Rule">The statement.</param>
public sealed record NotCountedPart(string Study, string Reason, RulePart Rule);
