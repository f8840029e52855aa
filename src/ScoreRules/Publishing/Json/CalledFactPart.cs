namespace ScoreRules.Publishing.Json;

/// <summary>A called fact.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Verdict">held, did not hold, or could not tell.</param>
/// <param name="Text">On what it rests.</param>
/// <param name="Rule">The statement.</param>
public sealed record CalledFactPart(string Name, string Verdict, string Text, RulePart Rule);
