namespace ScoreRules.Publishing.Json;

/// <summary>What would mend a finding.</summary>
/// <param name="Advice">In words.</param>
/// <param name="Safe">Whether the edit may be made without asking.</param>
/// <param name="Line">Line of the edit; null without one.</param>
/// <param name="Column">Column of the edit.</param>
/// <param name="Length">Length of what is replaced.</param>
/// <param name="Replacement">What stands there afterwards.</param>
public sealed record SuggestionPart(string Advice, bool Safe, int? Line, int? Column, int? Length, string? Replacement);
