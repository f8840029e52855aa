namespace ScoreRules.Publishing.Json;

/// <summary>A file that was read.</summary>
/// <param name="Path">Its path as the user would type it.</param>
/// <param name="Sha256">SHA-256 of its bytes.</param>
public sealed record InputPart(string Path, string Sha256);
