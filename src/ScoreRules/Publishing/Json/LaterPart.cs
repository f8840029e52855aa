namespace ScoreRules.Publishing.Json;

/// <summary>Something that was read and checked but has no effect yet.</summary>
/// <param name="What">The kind of statement or line.</param>
/// <param name="Count">How often it stands.</param>
/// <param name="File">File of the first place.</param>
/// <param name="Line">Line of the first place.</param>
public sealed record LaterPart(string What, int Count, string File, int Line);
