namespace ScoreRules.Publishing.Json;

/// <summary>A step of a rating.</summary>
/// <param name="Step">The step.</param>
/// <param name="Text">What it means.</param>
public sealed record StepPart(double Step, string Text);
