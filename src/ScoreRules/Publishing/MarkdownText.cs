using System.Text;

namespace ScoreRules.Publishing;

/// <summary>Text inside Markdown.</summary>
internal static class MarkdownText
{
    /// <summary>A name or a sentence of anybody: signs that mean something to Markdown or HTML are taken literally, line ends become blanks.</summary>
    public static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var sign in text.ReplaceLineEndings(" "))
        {
            if (sign is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' or '&')
            {
                escaped.Append('\\');
            }

            escaped.Append(sign);
        }

        return escaped.ToString();
    }
}
