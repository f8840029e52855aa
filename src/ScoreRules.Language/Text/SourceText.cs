namespace ScoreRules.Language.Text;

/// <summary>One file of rule text with its name and the places where its lines begin.</summary>
public sealed class SourceText
{
    private readonly List<int> lineStarts = [0];

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

    /// <summary>Name to print in messages.</summary>
    public string Path { get; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Whether it stands in a folder named "shared", so that a clash with a house's own file is the house's to mend.</summary>
    public bool IsShared => Path.Split('/').AsSpan()[..^1].Contains("shared", StringComparer.Ordinal);

    /// <summary>Whether it is the house's own: neither shared with other houses nor built into the program.</summary>
    public bool IsOwn => !IsShared && !Path.StartsWith('(');

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

    /// <summary>A place in this text.</summary>
    public SourceLocation At(SourceSpan span) => new(this, span);
}
