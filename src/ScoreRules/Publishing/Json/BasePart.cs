namespace ScoreRules.Publishing.Json;

/// <summary>A house that another builds on.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version.</param>
public sealed record BasePart(string Name, string Version);
