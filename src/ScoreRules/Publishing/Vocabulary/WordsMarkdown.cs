using System.Text;

namespace ScoreRules.Publishing.Vocabulary;

/// <summary>Words as a page in Markdown, to keep beside a house while writing it.</summary>
public static class WordsMarkdown
{
    private const string Special = "\\`*_[]<>";

    /// <summary>The words given.</summary>
    /// <param name="title">Heading of the page.</param>
    /// <param name="entries">The words.</param>
    public static string Print(string title, IReadOnlyCollection<WordEntry> entries)
    {
        var page = new StringBuilder();
        page.Append("# ").Append(Escaped(title)).Append('\n');
        foreach (var kind in entries.GroupBy(entry => entry.Kind))
        {
            page.Append("\n## ").Append(WordsText.Heading(kind.Key)).Append("\n\n");
            foreach (var entry in kind)
            {
                Append(page, entry);
            }
        }

        return page.ToString();
    }

    private static void Append(StringBuilder page, WordEntry entry)
    {
        var told = entry.Kind == WordKind.Kit ? "" : WordsText.Told(entry);
        page.Append("- **").Append(Escaped(entry.Name)).Append("**").Append(told.Length == 0 ? "" : ": ").Append(Escaped(told)).Append('\n');
        foreach (var (step, text) in entry.Steps)
        {
            page.Append("  - ").Append(NumberText.Plain(step)).Append(": ").Append(Escaped(text)).Append('\n');
        }

        if (!entry.Values.IsEmpty)
        {
            page.Append("  - ").Append(Escaped(string.Join(", ", entry.Values))).Append('\n');
        }
    }

    private static string Escaped(string text) =>
        string.Concat(text.Select(sign => Special.Contains(sign, StringComparison.Ordinal) ? $"\\{sign}" : sign.ToString()));
}
