using System.Collections.Immutable;
using System.Text;

namespace ScoreRules.Language.Text;

/// <summary>
/// Composes a text of pieces of others so that every place in it is still known by where it was taken from: a finding in a
/// line that was moved points to the file in which an author wrote it.
/// </summary>
/// <param name="under">The text whose name and layer the composed one takes.</param>
internal sealed class TextComposer(SourceText under)
{
    private readonly StringBuilder text = new();
    private readonly ImmutableArray<TextPiece>.Builder pieces = ImmutableArray.CreateBuilder<TextPiece>();

    /// <summary>Copies a stretch of a text.</summary>
    public TextComposer Copy(SourceText source, SourceSpan span)
    {
        pieces.Add(new TextPiece(text.Length, span.Length, source, span, IsCopy: true));
        text.Append(source.Text, span.Start, span.Length);
        return this;
    }

    /// <summary>Writes words that stand for a stretch of a text.</summary>
    public TextComposer Write(string words, SourceText source, SourceSpan standsFor)
    {
        pieces.Add(new TextPiece(text.Length, words.Length, source, standsFor, IsCopy: false));
        text.Append(words);
        return this;
    }

    /// <summary>Begins a new inner line.</summary>
    public TextComposer NewLine(SourceText source, SourceSpan next) => Write("\n  ", source, next with { Length = 0 });

    /// <summary>The composed text.</summary>
    public SourceText ToText() => new(under, text.ToString(), pieces.ToImmutable());
}
