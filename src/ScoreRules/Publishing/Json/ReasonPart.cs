namespace ScoreRules.Publishing.Json;

/// <summary>A reason for or against.</summary>
/// <param name="Name">The criterion or rule.</param>
/// <param name="Points">Points more (or less) than the benchmark.</param>
/// <param name="Text">Why, in words.</param>
/// <param name="Rule">The statement behind it.</param>
public sealed record ReasonPart(string Name, double Points, string Text, RulePart Rule);
