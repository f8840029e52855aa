namespace ScoreRules.Starting;

/// <summary>A file of a starter house.</summary>
/// <param name="Name">Its name in the folder.</param>
/// <param name="Text">Its text.</param>
public sealed record StarterFile(string Name, string Text);
