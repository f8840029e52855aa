using System.Text;

namespace ScoreRules.Report.Rendering;

/// <summary>What stands in the margin of every printed page: the edition, the caution and the page number.</summary>
internal static class PrintMargins
{
    /// <summary>The style rules for it.</summary>
    public static string Css(string margin) =>
        $"@page{{@bottom-left{{content:{Quoted(margin)}}}@bottom-right{{content:counter(page)}}}}\n";

    // A house's name is anybody's text: all but plain signs become escapes, so that it can end neither the string nor the style sheet.
    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsAscii && (Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or ',' or '.' or '\'' or '-'))
            {
                quoted.Append(rune);
            }
            else
            {
                quoted.Append(System.Globalization.CultureInfo.InvariantCulture, $"\\{rune.Value:x} ");
            }
        }

        return quoted.Append('"').ToString();
    }
}
