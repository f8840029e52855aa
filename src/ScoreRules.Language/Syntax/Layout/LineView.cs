using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>A physical line, seen without looking at its words.</summary>
/// <param name="Number">Line number from 1.</param>
/// <param name="Content">From its first sign that is not white space to its last.</param>
/// <param name="Kind">Blank, at the edge, or set in.</param>
internal readonly record struct LineView(int Number, SourceSpan Content, LineKind Kind)
{
    /// <summary>All lines of a text.</summary>
    public static LineView[] Of(SourceText source)
    {
        var lines = new LineView[source.LineCount];
        for (var number = 1; number <= lines.Length; number++)
        {
            lines[number - 1] = Look(source, number);
        }

        return lines;
    }

    /// <summary>Whether the line holds a verb, as facts and tiers do.</summary>
    public bool HasVerb(SourceText source)
    {
        var text = source.Text.AsSpan(Content.Start, Content.Length);
        foreach (var word in text.Split(' '))
        {
            if (text[word] is "is" or "has")
            {
                return true;
            }
        }

        return false;
    }

    private static LineView Look(SourceText source, int number)
    {
        var span = source.LineSpan(number);
        var (start, end) = (span.Start, span.End);
        if (start == 0 && end > 0 && source.Text[0] == '\uFEFF')
        {
            start++;
        }

        var edge = start;
        while (start < end && char.IsWhiteSpace(source.Text[start]))
        {
            start++;
        }

        while (end > start && char.IsWhiteSpace(source.Text[end - 1]))
        {
            end--;
        }

        var kind = start == end ? LineKind.Blank : start == edge ? LineKind.Edge : LineKind.Inner;
        return new LineView(number, SourceSpan.FromBounds(start, end), kind);
    }
}
