using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>A statement: its first line, its inner lines, and where it stands.</summary>
/// <param name="Spec">Its kind.</param>
/// <param name="Source">The text it stands in.</param>
/// <param name="Span">All of it.</param>
/// <param name="First">Its first line; null when that line could not be read.</param>
/// <param name="Lines">Its inner lines that could be read, in order.</param>
/// <param name="Prose">The inner lines of free text.</param>
/// <param name="Section">The section heading above it.</param>
/// <param name="IsWhole">Whether every line of it could be read.</param>
internal sealed record StatementSyntax(
    HeadSpec Spec,
    SourceText Source,
    SourceSpan Span,
    ClauseSyntax? First,
    ImmutableArray<ClauseSyntax> Lines,
    ImmutableArray<TextSyntax> Prose,
    string? Section,
    bool IsWhole)
{
    /// <summary>The lines of one kind, with what they say.</summary>
    public IEnumerable<ClauseSyntax<T>> All<T>(ClauseSpec<T> spec) => Has(spec) ? Lines.Where(line => ReferenceEquals(line.Spec, spec)).Cast<ClauseSyntax<T>>() : [];

    /// <summary>The first line of one kind, or null.</summary>
    public ClauseSyntax<T>? Find<T>(ClauseSpec<T> spec)
    {
        foreach (var line in Lines)
        {
            if (ReferenceEquals(line.Spec, spec))
            {
                return (ClauseSyntax<T>)line;
            }
        }

        return null;
    }

    /// <summary>Whether a kind of line stands in it.</summary>
    public bool Has(ClauseSpec spec)
    {
        foreach (var line in Lines)
        {
            if (ReferenceEquals(line.Spec, spec))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What the first line says.</summary>
    public T Head<T>() => ((ClauseSyntax<T>)First!).Content;

    /// <summary>Where the first line stands.</summary>
    public SourceLocation HeadLocation => Source.At(First?.Span ?? Span);

    /// <summary>A place in the same text.</summary>
    public SourceLocation At(SourceSpan span) => Source.At(span);
}
