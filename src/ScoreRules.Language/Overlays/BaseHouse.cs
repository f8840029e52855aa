namespace ScoreRules.Language.Overlays;

/// <summary>A house that another builds on.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version as written.</param>
public sealed record BaseHouse(string Name, string Version);
