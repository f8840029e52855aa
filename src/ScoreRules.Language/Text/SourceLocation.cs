namespace ScoreRules.Language.Text;

/// <summary>A span in a named text: what every finding, rule and fact can be traced to.</summary>
/// <param name="Source">The text.</param>
/// <param name="Span">The stretch of it.</param>
public sealed record SourceLocation(SourceText Source, SourceSpan Span)
{
    /// <summary>Line of the first character, from 1.</summary>
    public int Line => Source.LineOf(Span.Start);

    /// <summary>Column of the first character in its line, from 1, in UTF-16 units.</summary>
    public int Column => Source.ColumnOf(Span.Start);

    /// <summary>Name of the text.</summary>
    public string Path => Source.Path;

    /// <summary>The characters there.</summary>
    public string Text => Source.Slice(Span);

    /// <summary>The place as <c>file:line</c>.</summary>
    public override string ToString() => $"{Path}:{Line.ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    /// <summary>Order by file name, then by place.</summary>
    public static int Compare(SourceLocation left, SourceLocation right)
    {
        var byPath = string.CompareOrdinal(left.Path, right.Path);
        return byPath != 0 ? byPath : (left.Span.Start, left.Span.Length).CompareTo((right.Span.Start, right.Span.Length));
    }
}
