using System.Text;

namespace ScoreRules.Publishing.Editions;

/// <summary>The list of editions and what changed between neighbours, as Markdown.</summary>
public static class EditionListMarkdown
{
    /// <summary>The page.</summary>
    public static string Print(EditionList list)
    {
        var page = new StringBuilder();
        Paragraph(page, $"# {Escaped(list.Title)}");
        Paragraph(page, Sentences.Education);
        First(page, EditionWords.ForAll(list));
        foreach (var (house, editions) in list.Houses)
        {
            Paragraph(page, $"## {Escaped(house)}");
            First(page, EditionWords.Own(list, editions));
            foreach (var listed in editions)
            {
                Print(page, listed);
            }
        }

        return page.ToString().TrimEnd('\n') + "\n";
    }

    private static void First(StringBuilder page, IEnumerable<string> cautions)
    {
        foreach (var caution in cautions)
        {
            Paragraph(page, $"**First:** {Escaped(caution)}");
        }
    }

    private static void Print(StringBuilder page, ListedEdition listed)
    {
        var edition = listed.Edition;
        Paragraph(page, $"### {Escaped(EditionWords.Title(edition))}");
        Paragraph(page, Escaped(EditionWords.About(edition)));
        Paragraph(page, $"Open: {string.Join(", ", EditionWords.Forms(edition).Select(form => $"[{form.Name}]({edition.Name}/{form.File})"))}.");
        Paragraph(page, $"**What changed.** {Escaped(EditionWords.Summary(listed))}");
        foreach (var text in EditionWords.Cautions(listed))
        {
            Paragraph(page, Escaped(text));
        }

        foreach (var target in EditionWords.Told(listed).GroupBy(change => change.Target, StringComparer.Ordinal))
        {
            Paragraph(page, $"{Escaped(Sentences.Capital(target.Key))}:");
            page.AppendJoin("", target.Select(change => $"- {Escaped(EditionWords.Change(change))}\n")).Append('\n');
        }
    }

    private static void Paragraph(StringBuilder page, string text) => page.Append(text).Append("\n\n");

    private static string Escaped(string text) => MarkdownText.Escaped(text);
}
