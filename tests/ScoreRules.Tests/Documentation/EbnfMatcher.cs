using ScoreRules.Language.Syntax;

namespace ScoreRules.Tests.Documentation;

/// <summary>Whether tokens of rule text are a sentence of a rule in EBNF: every way of reading is followed at once.</summary>
internal sealed class EbnfMatcher(IReadOnlyDictionary<string, EbnfNode> rules, string text, IReadOnlyList<ScannedToken> tokens)
{
    /// <summary>Whether the tokens, all of them, are such a sentence.</summary>
    public bool Fits(EbnfNode node) => Ends(node, 0).Contains(tokens.Count);

    private HashSet<int> Ends(EbnfNode node, int start) => node switch
    {
        EbnfTerminal terminal => Words(terminal.Text, start) is { } end ? [end] : [],
        EbnfSpecial special => start < tokens.Count && Is(special.Described, tokens[start].Kind) ? [start + 1] : [],
        EbnfReference reference => Ends(rules[reference.Name], start),
        EbnfOptional optional => [start, .. Ends(optional.Inner, start)],
        EbnfRepeated repeated => Repeated(repeated.Inner, start),
        EbnfSequence sequence => sequence.Parts.Aggregate(new HashSet<int> { start }, (ends, part) => [.. ends.SelectMany(end => Ends(part, end))]),
        EbnfChoice choice => [.. choice.Parts.SelectMany(part => Ends(part, start))],
        _ => throw new InvalidOperationException(node.ToString()),
    };

    private HashSet<int> Repeated(EbnfNode inner, int start)
    {
        var (reached, open) = (new HashSet<int> { start }, new Queue<int>([start]));
        while (open.TryDequeue(out var at))
        {
            foreach (var end in Ends(inner, at).Where(reached.Add))
            {
                open.Enqueue(end);
            }
        }

        return reached;
    }

    private int? Words(string words, int start)
    {
        foreach (var word in words.Split(' '))
        {
            if (start >= tokens.Count || tokens[start].Kind is TokenKind.Quoted or TokenKind.Text || !text.AsSpan(tokens[start].Span.Start, tokens[start].Span.Length).Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return null;
            }

            start++;
        }

        return start;
    }

    private static bool Is(string described, TokenKind kind) => described.Split(' ')[0] switch
    {
        "three" => kind == TokenKind.Version,
        "digits," => kind == TokenKind.Number,
        "a" => kind == TokenKind.Word,
        "anything" => kind == (described.Contains("quote", StringComparison.Ordinal) ? TokenKind.Quoted : TokenKind.Text),
        _ => throw new InvalidOperationException(described),
    };
}
