using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>What a house is called and what it builds on, read from its text before all else is.</summary>
/// <param name="Name">Its name.</param>
/// <param name="BuildsOn">Name of the house it builds on; null for none.</param>
public sealed record HouseName(string Name, string? BuildsOn)
{
    /// <summary>Reads it from a file; null when no ruleset stands there. Reports nothing: the whole file is read later.</summary>
    public static HouseName? Read(string text)
    {
        var at = Start(text);
        if (at < 0)
        {
            return null;
        }

        var ruleset = SyntaxParser.Parse(new SourceText("ruleset", Statement(text, at))).Statements.FirstOrDefault(statement => statement.Spec == HouseGrammar.Ruleset && statement.First is not null);
        return ruleset is null ? null : new HouseName(ruleset.Head<NameSyntax>().Text, ruleset.Find(HouseGrammar.BuildsOn)?.Content.Name.Text);
    }

    // The first line that starts with the head, at the edge.
    private static int Start(string text)
    {
        for (var at = 0; at >= 0 && at < text.Length; at = Next(text, at))
        {
            if (text.AsSpan(at).TrimStart('\uFEFF').StartsWith("ruleset ", StringComparison.OrdinalIgnoreCase))
            {
                return at;
            }
        }

        return -1;
    }

    private static string Statement(string text, int start)
    {
        var end = Next(text, start);
        while (end > 0 && end < text.Length && text[end] is ' ' or '\t')
        {
            end = Next(text, end);
        }

        return text[start..(end < 0 ? text.Length : end)];
    }

    private static int Next(string text, int at) => text.IndexOf('\n', at) is var found and >= 0 ? found + 1 : -1;
}
