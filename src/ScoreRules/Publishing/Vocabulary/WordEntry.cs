using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Publishing.Vocabulary;

/// <summary>A word that a house's text may use.</summary>
/// <param name="Kind">What kind of thing it names.</param>
/// <param name="Name">The word as declared.</param>
/// <param name="Meaning">What it takes or stands for, in a few words.</param>
public sealed record WordEntry(WordKind Kind, string Name, string Meaning)
{
    /// <summary>One line that says more; null when nobody wrote one.</summary>
    public string? Description { get; init; }

    /// <summary>Words it allows (attributes) or is made of (targets).</summary>
    public ImmutableArray<string> Values { get; init; } = [];

    /// <summary>What the steps of a rating mean.</summary>
    public ImmutableArray<(double Step, string Text)> Steps { get; init; } = [];

    /// <summary>Other names.</summary>
    public ImmutableArray<string> Synonyms { get; init; } = [];

    /// <summary>Where it is declared; null for what is built in.</summary>
    public SourceLocation? Location { get; init; }
}
