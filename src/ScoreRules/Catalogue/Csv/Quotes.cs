using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>How quotes stand in a raw cell, white space at its ends taken off.</summary>
internal static class Quotes
{
    /// <summary>Whether the cell is wholly in quotes.</summary>
    public static bool IsQuoted(string text, SourceSpan raw) => raw.Length >= 2 && text[raw.Start] == '"' && text[raw.End - 1] == '"';

    /// <summary>
    /// What is wrong with the quotes of a cell, or null: a quote that is never closed, text behind the closing quote, or a
    /// quote in a cell that does not begin with one (which would hide separators and line ends up to the next quote).
    /// </summary>
    public static (SourceSpan Place, string Headline, string Advice)? Fault(string text, SourceSpan raw)
    {
        var first = text.IndexOf('"', raw.Start, raw.Length);
        if (first < 0)
        {
            return null;
        }

        if (first > raw.Start)
        {
            return (new SourceSpan(first, 1), "A double quote stands in a cell that does not begin with one",
                "put the whole cell in double quotes and double the quotes in it, or leave the quote out");
        }

        var close = Closing(text, raw);
        return close < 0
            ? (new SourceSpan(first, 1), "The double quote that starts here is not closed", "add a double quote where the cell ends")
            : close == raw.End - 1
                ? null
                : (CsvCell.Trim(text, SourceSpan.FromBounds(close + 1, raw.End)), "Text stands behind the double quote that closes a cell",
                    "put the whole cell in double quotes and double the quotes in it");
    }

    private static int Closing(string text, SourceSpan raw)
    {
        for (var at = raw.Start + 1; at < raw.End; at++)
        {
            if (text[at] != '"')
            {
                continue;
            }

            if (at + 1 == raw.End || text[at + 1] != '"')
            {
                return at;
            }

            at++;
        }

        return -1;
    }
}
