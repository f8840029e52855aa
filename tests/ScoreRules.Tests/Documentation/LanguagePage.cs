using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Documentation;

/// <summary><c>docs/language.md</c>, in its parts: the rows about lines, the examples, and the small house that they stand in.</summary>
internal static class LanguagePage
{
    /// <summary>Where the page is kept.</summary>
    public static readonly string[] File = ["docs", "language.md"];

    /// <summary>What the tables call a line that starts with no word of its own.</summary>
    public const string NamedLine = "a name";

    /// <summary>The whole page.</summary>
    public static string Text { get; } = Repository.Read(File).ReplaceLineEndings("\n");

    /// <summary>Its fenced blocks.</summary>
    public static IReadOnlyList<MarkdownBlock> Blocks { get; } = MarkdownBlocks.In(Text);

    /// <summary>The small house of the examples.</summary>
    public static string House { get; } = Blocks.Single(block => block.Info == "rules house").Text;

    /// <summary>The examples, each with the base it builds on, in order.</summary>
    public static IReadOnlyList<LanguageExample> Examples { get; } =
    [
        .. Blocks.Select((block, index) => (block, below: index > 0 && Blocks[index - 1].Info == "rules base" ? Blocks[index - 1].Text : null))
            .Where(pair => pair.block.Info is "rules" or "rules alone").Select((pair, index) => new LanguageExample(index, pair.block, pair.below)),
    ];

    /// <summary>The rows of the tables: heading, first words of the line, how often it may stand.</summary>
    public static IReadOnlyList<(string Heading, string Line, string HowOften)> Rows { get; } = [.. ReadRows()];

    /// <summary>The heading under which a kind of statement is told.</summary>
    public static string HeadingOf(HeadSpec head) =>
        head.Words.Split(' ')[0] is "change" or "drop" ? head.Words.Split(' ')[0] : Headings.Single(heading => heading.Split(", ").Contains(head.Words));

    private static IEnumerable<string> Headings => Text.Split('\n').Where(line => line.StartsWith("### ", StringComparison.Ordinal)).Select(line => line[4..]);

    private static IEnumerable<(string Heading, string Line, string HowOften)> ReadRows()
    {
        var heading = "";
        foreach (var line in Text.Split('\n'))
        {
            heading = line.StartsWith("##", StringComparison.Ordinal) ? line.TrimStart('#', ' ') : heading;
            var cells = line.StartsWith("| ", StringComparison.Ordinal) ? line.Split(" | ") : [];
            if (cells.Length == 3 && cells[0] != "| Line" && cells[0] != "| ---")
            {
                yield return (heading, cells[0][2..].Trim('`'), cells[2].TrimEnd(' ', '|'));
            }
        }
    }
}
