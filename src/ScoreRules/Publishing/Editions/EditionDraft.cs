using System.Collections.Immutable;

namespace ScoreRules.Publishing.Editions;

/// <summary>An edition before it is written.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Files">Its files, the list of contents last.</param>
public sealed record EditionDraft(string Name, ImmutableArray<EditionFile> Files)
{
    /// <summary>Whether a folder holds exactly these files.</summary>
    public bool IsSame(IReadOnlyDictionary<string, byte[]> files) =>
        files.Count == Files.Length && Files.All(file => files.TryGetValue(file.Path, out var bytes) && bytes.AsSpan().SequenceEqual(file.Bytes));
}
