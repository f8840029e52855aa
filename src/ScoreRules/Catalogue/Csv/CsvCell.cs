using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>A cell, or a part of one.</summary>
/// <param name="Source">The table.</param>
/// <param name="Span">What it holds, without the quotes round it and without white space at either end.</param>
/// <param name="IsQuoted">Whether quotes stand round it, so that two quotes in it mean one.</param>
/// <param name="HasFreeComma">Whether a comma in it separates no cells: it may be a decimal comma or separate words.</param>
internal readonly record struct CsvCell(SourceText Source, SourceSpan Span, bool IsQuoted, bool HasFreeComma)
{
    /// <summary>Whether nothing is written in it.</summary>
    public bool IsBlank => Span.Length == 0;

    /// <summary>Its place in the table.</summary>
    public SourceLocation Location => Source.At(Span);

    /// <summary>What it says; doubled quotes are one, and line breaks are kept.</summary>
    public string Text => IsQuoted ? Source.Slice(Span).Replace("\"\"", "\"", StringComparison.Ordinal) : Source.Slice(Span);

    /// <summary>Its characters as they stand in the table.</summary>
    public ReadOnlySpan<char> Raw => Source.Text.AsSpan(Span.Start, Span.Length);

    /// <summary>A part of it without the white space at either end.</summary>
    /// <param name="start">Offset of the first character in <see cref="Raw"/>.</param>
    /// <param name="end">Offset just behind the last.</param>
    public CsvCell Part(int start, int end) => this with { Span = Trim(Source.Text, SourceSpan.FromBounds(Span.Start + start, Span.Start + end)) };

    /// <summary>A span without the white space at either end; where nothing else is left, the gap at its start.</summary>
    public static SourceSpan Trim(string text, SourceSpan span)
    {
        var (start, end) = (span.Start, span.End);
        while (end > start && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }

        while (start < end && char.IsWhiteSpace(text[start]))
        {
            start++;
        }

        return SourceSpan.FromBounds(start, end);
    }
}
