using System.Text.RegularExpressions;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Tests.Documentation.Ebnf;

namespace ScoreRules.Tests.Documentation.Manual;

/// <summary>The forms of the manual as a grammar of single lines: what follows them, and whether a line does.</summary>
internal sealed partial class LineForms
{
    private const string OneLine = "the line";
    private static readonly string[] Wanted = ["wren", "plover's", "north-west", "b/c", "45-degree", "égret", "heron.two"];
    private static readonly string[] Numbers = ["4", "2.5", "-3", "1016"];
    private readonly Dictionary<string, EbnfPart> rules = LanguageManual.Rules();

    /// <summary>A line of a kind, without its first words, that follows its form.</summary>
    public string Write(ClauseSpec spec, int number) => new EbnfSentences(With(spec), Typed).Write(OneLine, number)[spec.Starter.Length..].Trim();

    /// <summary>Whether a line of a kind follows its form.</summary>
    public bool Fits(ClauseSpec spec, string line) => new EbnfRecogniser(With(spec), Ends).Fits(OneLine, line);

    private Dictionary<string, EbnfPart> With(ClauseSpec spec)
    {
        rules[OneLine] = EbnfReader.Read($"{OneLine} = {ClauseForms.Line(spec)} ;")[OneLine];
        return rules;
    }

    private static string Typed(string said, int pick) => said.Split(' ')[0] switch
    {
        "letters," => Wanted[pick % Wanted.Length],
        "digits," => Numbers[pick % Numbers.Length],
        "numbers" => pick % 2 == 0 ? "3.0.0" : "1.20.3",
        "anything" when said.Contains("quotes", StringComparison.Ordinal) => "\"feet high, and wide\"",
        "anything" => "what is not 4, or (so)",
        _ => throw new InvalidOperationException(said),
    };

    private static IEnumerable<int> Ends(string said, string text, int at)
    {
        var match = said.Split(' ')[0] switch
        {
            "letters," => Word().Match(text, at),
            "digits," => Number().Match(text, at),
            "numbers" => Dotted().Match(text, at),
            "anything" when said.Contains("quotes", StringComparison.Ordinal) => Quoted().Match(text, at),
            "anything" => Rest().Match(text, at),
            _ => throw new InvalidOperationException(said),
        };
        return match.Success && !ReservedWords.All.Contains(match.Value, StringComparer.OrdinalIgnoreCase) ? [match.Index + match.Length] : [];
    }

    [GeneratedRegex(@"\G(?:\p{L}|[0-9]+-(?=\p{L}))(?:[\p{L}\p{Mn}0-9]|['’./-](?=[\p{L}0-9]))*", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Word();

    [GeneratedRegex(@"\G-?[0-9]+(?:\.[0-9]+)?(?![.\p{L}0-9])", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"\G[0-9]+(?:\.[0-9]+){2,}", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Dotted();

    [GeneratedRegex("\\G\"[^\"]*\"", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\G.+$", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Rest();
}
