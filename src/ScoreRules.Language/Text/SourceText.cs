using System.Collections.Immutable;

namespace ScoreRules.Language.Text;

/// <summary>One file of rule text with its name and the places where its lines begin; or a text composed of pieces of such files.</summary>
public sealed class SourceText
{
    private readonly List<int> lineStarts = [0];
    private readonly ImmutableArray<TextPiece> pieces = [];

    /// <summary>Keeps a text under a name.</summary>
    /// <param name="path">Name to print in messages; forward slashes, relative to the folder the user named.</param>
    /// <param name="text">The whole text.</param>
    public SourceText(string path, string text)
    {
        Path = path;
        Text = text;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n')
            {
                lineStarts.Add(i + 1);
            }
        }
    }

    /// <summary>Keeps a text that is composed of pieces; its places are those of the pieces.</summary>
    internal SourceText(SourceText under, string text, ImmutableArray<TextPiece> pieces)
        : this(under.Path, text)
    {
        this.pieces = pieces;
        (Layer, IsOfBase) = (under.Layer, under.IsOfBase);
    }

    /// <summary>Name to print in messages.</summary>
    public string Path { get; }

    /// <summary>Which house of a chain it belongs to: 1 for the base of all, 2 for the house that builds on it, and so on; 0 when not said.</summary>
    public int Layer { get; init; }

    /// <summary>Whether another house builds on the one it belongs to.</summary>
    public bool IsOfBase { get; init; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Whether it stands in a folder named "shared", so that a clash with a house's own file is the house's to mend.</summary>
    public bool IsShared => Path.Split('/').AsSpan()[..^1].Contains("shared", StringComparer.Ordinal);

    /// <summary>Whether it is the house's own: neither shared with other houses, nor of a house below, nor built into the program.</summary>
    public bool IsOwn => !IsShared && !IsOfBase && !Path.StartsWith('(');

    /// <summary>The floor it stands on: 0 for what all houses share, 1 for the base of all, and so on.</summary>
    public int Floor => IsShared ? 0 : Math.Max(1, Layer);

    /// <summary>Number of lines; an empty text has one.</summary>
    public int LineCount => lineStarts.Count;

    /// <summary>The line (from 1) that holds an offset.</summary>
    public int LineOf(int offset)
    {
        var found = lineStarts.BinarySearch(offset);
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>The column (from 1, in UTF-16 units, as editors count) of an offset in its line.</summary>
    public int ColumnOf(int offset) => offset - lineStarts[LineOf(offset) - 1] + 1;

    /// <summary>The span of a line (from 1) without its line end.</summary>
    public SourceSpan LineSpan(int line)
    {
        var start = lineStarts[line - 1];
        var end = line < lineStarts.Count ? lineStarts[line] - 1 : Text.Length;
        if (end > start && Text[end - 1] == '\r')
        {
            end--;
        }

        return SourceSpan.FromBounds(start, end);
    }

    /// <summary>The characters of a span.</summary>
    public string Slice(SourceSpan span) => Text.Substring(span.Start, span.Length);

    /// <summary>A place in this text; of a composed text, the place that the piece was taken from.</summary>
    public SourceLocation At(SourceSpan span)
    {
        if (pieces.IsEmpty)
        {
            return new SourceLocation(this, span);
        }

        var piece = pieces.FirstOrDefault(piece => span.Length == 0 ? span.Start <= piece.End : span.Start < piece.End, pieces[^1]);
        return piece.Origin(span);
    }
}
