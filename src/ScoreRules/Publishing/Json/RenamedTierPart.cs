namespace ScoreRules.Publishing.Json;

/// <summary>A tier with another name at the same place.</summary>
/// <param name="Old">Its name in the old house.</param>
/// <param name="New">Its name in the new house.</param>
public sealed record RenamedTierPart(string Old, string New);
