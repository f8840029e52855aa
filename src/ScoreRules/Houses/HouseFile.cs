namespace ScoreRules.Houses;

/// <summary>One file of a house.</summary>
/// <param name="Path">Its name for messages: what the user typed for the house, then the rest, with forward slashes.</param>
/// <param name="Text">Its text.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hexadecimal.</param>
/// <param name="IsSpreadsheet">Whether it is a spreadsheet (CSV) instead of rule text.</param>
public sealed record HouseFile(string Path, string Text, string Sha256, bool IsSpreadsheet)
{
    /// <summary>Which house of a chain it belongs to: 1 for the base of all, 2 for the house that builds on it, and so on; 0 for what is shared.</summary>
    public int Layer { get; init; }
}
