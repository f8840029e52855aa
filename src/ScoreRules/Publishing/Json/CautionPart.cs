namespace ScoreRules.Publishing.Json;

/// <summary>A caution.</summary>
/// <param name="Text">Its message.</param>
/// <param name="Severity">stop, high, medium or low.</param>
/// <param name="Shown">Where a page shows it.</param>
/// <param name="Undecided">Whether it is shown because its condition could not be told.</param>
/// <param name="Rule">The statement.</param>
public sealed record CautionPart(string Text, string Severity, string Shown, bool Undecided, RulePart Rule);
