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
        return IsWide(rune) || element.Contains('\uFE0F', StringComparison.Ordinal) ? 2 : 1;
    }

    private static bool IsWide(int rune) =>
        rune is (>= 0x1100 and <= 0x115F) or (>= 0x2E80 and <= 0xA4CF) or (>= 0xAC00 and <= 0xD7A3) or (>= 0xF900 and <= 0xFAFF)
            or (>= 0xFE30 and <= 0xFE6F) or (>= 0xFF00 and <= 0xFF60) or (>= 0xFFE0 and <= 0xFFE6) or (>= 0x1F300 and <= 0x1FAFF)
            or (>= 0x20000 and <= 0x3FFFD);
}
