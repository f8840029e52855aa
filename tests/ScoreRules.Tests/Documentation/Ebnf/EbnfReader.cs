using System.Text.RegularExpressions;

namespace ScoreRules.Tests.Documentation.Ebnf;

/// <summary>Reads rules in EBNF as far as the manual uses it: <c>= ; , | ( ) [ ] { } "..." ?...? (*...*)</c>.</summary>
internal sealed partial class EbnfReader
{
    private readonly string[] tokens;
    private int at;

    private EbnfReader(string text) => tokens = [.. Tokens().Matches(Remarks().Replace(text, "")).Select(match => match.Value.Trim())];

    /// <summary>The rules of a text by name.</summary>
    public static Dictionary<string, EbnfPart> Read(string text)
    {
        var reader = new EbnfReader(text);
        var rules = new Dictionary<string, EbnfPart>(StringComparer.Ordinal);
        while (reader.at < reader.tokens.Length)
        {
            var name = reader.Next();
            reader.Expect("=");
            rules.Add(name, reader.Choice());
            reader.Expect(";");
        }

        return rules;
    }

    private EbnfPart Choice()
    {
        var parts = new List<EbnfPart> { Sequence() };
        while (Skip("|"))
        {
            parts.Add(Sequence());
        }

        return parts.Count == 1 ? parts[0] : new EbnfPart.Choice([.. parts]);
    }

    private EbnfPart Sequence()
    {
        var parts = new List<EbnfPart> { Factor() };
        while (Skip(","))
        {
            parts.Add(Factor());
        }

        return parts.Count == 1 ? parts[0] : new EbnfPart.Sequence([.. parts]);
    }

    private EbnfPart Factor()
    {
        var token = Next();
        return token[0] switch
        {
            '"' => new EbnfPart.Terminal(token[1..^1]),
            '?' => new EbnfPart.Special(token[1..^1].Trim()),
            '(' => Closed(Choice(), ")"),
            '[' => new EbnfPart.Optional(Closed(Choice(), "]"), Repeats: false),
            '{' => new EbnfPart.Optional(Closed(Choice(), "}"), Repeats: true),
            _ when char.IsLetter(token[0]) => new EbnfPart.Reference(token),
            _ => throw new FormatException($"\"{token}\" does not fit in EBNF"),
        };
    }

    private EbnfPart Closed(EbnfPart part, string sign)
    {
        Expect(sign);
        return part;
    }

    private string Next() => at < tokens.Length ? tokens[at++] : throw new FormatException("EBNF ends too early");

    private bool Skip(string sign)
    {
        var found = at < tokens.Length && tokens[at] == sign;
        at += found ? 1 : 0;
        return found;
    }

    private void Expect(string sign)
    {
        var found = Next();
        if (found != sign)
        {
            throw new FormatException($"EBNF has \"{found}\" where \"{sign}\" is expected, behind {string.Join(' ', tokens[Math.Max(0, at - 12)..at])}");
        }
    }

    [GeneratedRegex(@"\(\*.*?\*\)", RegexOptions.Singleline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Remarks();

    [GeneratedRegex("\"[^\"]*\"|\\?[^?]*\\?|[a-zA-Z][a-zA-Z \\-]*|[=;,|()\\[\\]{}]", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Tokens();
}
