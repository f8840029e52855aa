using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A caution that differs.</summary>
/// <param name="Change">"lost", "added", "weaker" (less serious, or no longer beside some movement) or "wider".</param>
/// <param name="Text">The message.</param>
/// <param name="Old">The statement of the old house.</param>
/// <param name="New">The statement of the new house.</param>
/// <param name="NoLonger">Movements beside which it is no longer shown.</param>
/// <param name="Newly">Movements beside which it is shown now.</param>
public sealed record CautionChangePart(string Change, string Text, RulePart? Old, RulePart? New, ImmutableArray<string> NoLonger, ImmutableArray<string> Newly);
