using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>What a change says in place of what stood there.</summary>
/// <param name="NewText">What the house says now, on one line.</param>
/// <param name="New">Where it says so.</param>
/// <param name="OldText">What stood there before, on one line; null when nothing did.</param>
/// <param name="Old">Where that stands; null when nothing did.</param>
/// <param name="OldHouse">The house that said so; null when nothing stood there.</param>
public sealed record AmendedLine(string NewText, SourceLocation New, string? OldText, SourceLocation? Old, string? OldHouse);
