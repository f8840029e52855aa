namespace ScoreRules.Tests.Support;

/// <summary>A fenced block of a Markdown text.</summary>
/// <param name="Info">What stands behind the opening fence, such as "rules alone".</param>
/// <param name="Text">Its lines, each with its line end.</param>
/// <param name="Heading">The nearest heading above it; empty without one.</param>
internal sealed record MarkdownBlock(string Info, string Text, string Heading);

/// <summary>Finds fenced blocks. Only what the cases and pages of this repository need.</summary>
internal static class MarkdownBlocks
{
    private const string Fence = "```";

    public static IReadOnlyList<MarkdownBlock> In(string markdown)
    {
        var blocks = new List<MarkdownBlock>();
        var (heading, info, lines) = ("", default(string), new List<string>());
        foreach (var line in markdown.ReplaceLineEndings("\n").Split('\n'))
        {
            if (line.StartsWith(Fence, StringComparison.Ordinal))
            {
                if (info is not null)
                {
                    blocks.Add(new MarkdownBlock(info, string.Concat(lines.Select(text => text + "\n")), heading));
                }

                info = info is null ? line[Fence.Length..].Trim() : null;
                lines.Clear();
            }
            else if (info is not null)
            {
                lines.Add(line);
            }
            else if (line.StartsWith('#'))
            {
                heading = line.TrimStart('#', ' ');
            }
        }

        return blocks;
    }

    /// <summary>The text with the content of its one block of a kind replaced.</summary>
    public static string Replace(string markdown, string info, string content)
    {
        var opening = $"\n{Fence}{info}\n";
        var start = markdown.IndexOf(opening, StringComparison.Ordinal) + opening.Length;
        var end = markdown.IndexOf($"\n{Fence}", start - 1, StringComparison.Ordinal);
        return markdown[..start] + content + "\n" + markdown[(end + 1)..];
    }
}
