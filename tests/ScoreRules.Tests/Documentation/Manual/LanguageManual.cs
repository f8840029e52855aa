using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Tests.Documentation.Ebnf;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Documentation.Manual;

/// <summary>The page <c>docs/language.md</c>: its headings, examples and forms.</summary>
internal static class LanguageManual
{
    private const string Fence = "```ebnf\n";

    /// <summary>Where it is kept.</summary>
    public static string[] File { get; } = ["docs", "language.md"];

    /// <summary>The page as kept.</summary>
    public static string Text { get; } = Repository.Read(File).ReplaceLineEndings("\n");

    /// <summary>Its fenced blocks.</summary>
    public static IReadOnlyList<MarkdownBlock> Blocks { get; } = MarkdownBlocks.In(Text);

    /// <summary>Its examples in rule text, each with the house it builds on.</summary>
    public static IReadOnlyList<(MarkdownBlock Example, MarkdownBlock? Below)> Examples { get; } =
    [
        .. Blocks.Where(block => block.Info is "rules" or "rules alone")
            .Select(block => (block, Blocks.SingleOrDefault(below => below.Info == "rules base" && below.Heading == block.Heading))),
    ];

    /// <summary>Kinds of statement that stand in the language to be refused, so that the refusal can say why.</summary>
    public static bool IsRefused(HeadSpec head) => OverlayGrammar.KindOf(head)?.Words == "caution";

    /// <summary>The page with all forms written anew from the statement table.</summary>
    public static string Rewritten()
    {
        var parts = Text.Split(Fence);
        var heading = "";
        for (var i = 0; i < parts.Length; i++)
        {
            parts[i] = i == 0 ? parts[0] : Form(heading) + parts[i][parts[i].IndexOf("```", StringComparison.Ordinal)..];
            heading = parts[i].Split('\n').LastOrDefault(line => line.StartsWith("### ", StringComparison.Ordinal))?[4..] ?? heading;
        }

        return string.Join(Fence, parts);
    }

    /// <summary>All rules of the page.</summary>
    public static Dictionary<string, EbnfPart> Rules() =>
        EbnfReader.Read(string.Concat(Blocks.Where(block => block.Info.StartsWith("ebnf", StringComparison.Ordinal)).Select(block => block.Text)));

    private static string Form(string heading) => heading switch
    {
        "shared lines" => ManualGrammar.Shared(),
        "conditions" => ManualGrammar.Conditions(),
        "pieces" => ManualGrammar.Whole(),
        _ => string.Join('\n', ManualGrammar.Heads(heading).Select(ManualGrammar.Print)),
    };
}
