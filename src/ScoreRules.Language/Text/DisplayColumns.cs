using System.Globalization;

namespace ScoreRules.Language.Text;

/// <summary>Width of text in a terminal's fixed columns, so that carets stand under the right character.</summary>
public static class DisplayColumns
{
    private const int TabWidth = 4;

    /// <summary>A line as it is printed: tabs as blanks up to the next multiple of four, control and direction marks as visible marks.</summary>
    public static string Printable(string line)
    {
        var printed = new System.Text.StringBuilder(line.Length);
        foreach (var c in line)
        {
            if (c == '\t')
            {
                printed.Append(' ', TabWidth - (Width(printed.ToString()) % TabWidth));
            }
            else
            {
                printed.Append(IsHidden(c) ? '\uFFFD' : c);
            }
        }

        return printed.ToString();
    }

    /// <summary>Columns that a printable text takes: 2 for wide characters and emoji, 0 for combining marks.</summary>
    public static int Width(string text)
    {
        var width = 0;
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            width += WidthOf(elements.GetTextElement());
        }

        return width;
    }

    /// <summary>Whether a character is a control or direction mark that a reader cannot see.</summary>
    public static bool IsHidden(char c) =>
        (char.IsControl(c) && c != '\t') || c is (>= '\u200B' and <= '\u200F') or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\uFEFF';

    private static int WidthOf(string element)
    {
        var rune = System.Text.Rune.TryGetRuneAt(element, 0, out var first) ? first.Value : element[0];
        var combining = CharUnicodeInfo.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;
        return combining ? 0 : WideCharacters.IsWide(rune) || element.Contains('\uFE0F', StringComparison.Ordinal) ? 2 : 1;
    }
}
