namespace ScoreRules.Evidence;

/// <summary>What one study did to one movement.</summary>
/// <param name="Claim">What the study says.</param>
/// <param name="Points">Points up (positive) or down.</param>
/// <param name="IsTested">Whether it speaks of the movement itself; otherwise of a cousin.</param>
public sealed record StudyPull(StudyClaim Claim, double Points, bool IsTested);
