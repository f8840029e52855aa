namespace ScoreRules.Houses;

/// <summary>One file of a house.</summary>
/// <param name="Path">Its name for messages: what the user typed for the house, then the rest, with forward slashes.</param>
/// <param name="Text">Its text.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hexadecimal.</param>
/// <param name="IsSpreadsheet">Whether it is a spreadsheet (CSV) instead of rule text.</param>
public sealed record HouseFile(string Path, string Text, string Sha256, bool IsSpreadsheet);
