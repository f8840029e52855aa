namespace ScoreRules.Mending;

/// <summary>An edit that was made for the author.</summary>
/// <param name="Path">The file.</param>
/// <param name="Line">Line of the edit, from 1, in the text as it stood before the round that made it.</param>
/// <param name="Code">Code of the finding it mends.</param>
/// <param name="Headline">What was wrong.</param>
/// <param name="Advice">What was done.</param>
public sealed record MadeEdit(string Path, int Line, string Code, string Headline, string Advice);
