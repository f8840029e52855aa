namespace ScoreRules.Publishing.Json;

/// <summary>What became of a rule.</summary>
/// <param name="Effect">held, did not hold, could not tell, exempt or overridden.</param>
/// <param name="Text">Why.</param>
/// <param name="Rule">The statement.</param>
public sealed record RuleResultPart(string Effect, string Text, RulePart Rule);
