namespace ScoreRules.Publishing.Json;

/// <summary>A file of a published edition.</summary>
/// <param name="Path">Its place in the edition, with forward slashes.</param>
/// <param name="Layer">For rule text: 0 for what all houses share, 1 for the base of all, and so on to the house itself; null for what was made from it.</param>
/// <param name="Bytes">Its length in bytes.</param>
/// <param name="Sha256">SHA-256 of its bytes.</param>
public sealed record EditionFilePart(string Path, int? Layer, int Bytes, string Sha256);
