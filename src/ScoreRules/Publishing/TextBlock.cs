using System.Text;
using ScoreRules.Language.Text;

namespace ScoreRules.Publishing;

/// <summary>Lines of plain text for a terminal: labels in a gutter, words wrapped.</summary>
internal sealed class TextBlock(int width = 78)
{
    private readonly StringBuilder text = new();

    /// <summary>All lines.</summary>
    public override string ToString() => text.ToString();

    /// <summary>An empty line.</summary>
    public void Blank() => text.Append('\n');

    /// <summary>A line as it is.</summary>
    public void Line(string line) => text.Append(line.TrimEnd()).Append('\n');

    /// <summary>Words wrapped at the width, all lines set in by so many columns.</summary>
    public void Wrapped(string words, int indent = 0) => Labelled("", words, indent);

    /// <summary>A label, then words wrapped in the columns right of the gutter.</summary>
    /// <param name="label">The label; one longer than the gutter takes a line of its own.</param>
    /// <param name="words">The words.</param>
    /// <param name="gutter">Column at which the words begin.</param>
    public void Labelled(string label, string words, int gutter = 16)
    {
        var lines = Wrap(words, width - gutter);
        var fits = DisplayColumns.Width(label) < gutter || gutter == 0;
        if (!fits)
        {
            Line(label);
        }

        for (var i = 0; i < lines.Count; i++)
        {
            Line((i == 0 && fits ? Pad(label, gutter) : new string(' ', gutter)) + lines[i]);
        }
    }

    /// <summary>A text padded to so many columns.</summary>
    public static string Pad(string words, int columns) => words + new string(' ', Math.Max(0, columns - DisplayColumns.Width(words)));

    /// <summary>A text cut to so many columns, the last of them an ellipsis, and padded.</summary>
    public static string Fit(string words, int columns) =>
        DisplayColumns.Width(words) <= columns ? Pad(words, columns) : words[..Math.Min(words.Length, columns - 1)] + "…";

    private static List<string> Wrap(string words, int columns)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && DisplayColumns.Width(line.ToString()) + 1 + DisplayColumns.Width(word) > columns)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        lines.Add(line.ToString());
        return lines;
    }
}
