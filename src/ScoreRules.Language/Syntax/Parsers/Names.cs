using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;
using Superpower;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>Names: words that run on until a reserved word, a number, a comma or the end of the line; or one quoted text.</summary>
internal static class Names
{
    private static readonly Expectation Expected = new("a name", Literal: false);

    /// <summary>A name.</summary>
    public static TokenListParser<TokenKind, NameSyntax> Single { get; } = Until();

    /// <summary>Names with commas between.</summary>
    public static TokenListParser<TokenKind, NameSyntax[]> List { get; } = Single.CommaList();

    /// <summary>"for" and names at the end of a line, or nothing.</summary>
    public static TokenListParser<TokenKind, NameSyntax[]> ForTargets { get; } =
        Primitives.Token(TokenKind.For, "for", literal: true).IgnoreThen(List).OptionalOrDefault([]);

    /// <summary>A name that also ends before one of the phrases given.</summary>
    public static TokenListParser<TokenKind, NameSyntax> Until(params string[] stops)
    {
        var phrases = Array.ConvertAll(stops, stop => new Stop(stop.Split(' '), new Expectation(stop, Literal: true)));
        return input => Parse(input, phrases);
    }

    private static TokenListParserResult<TokenKind, NameSyntax> Parse(TokenList<TokenKind> input, Stop[] stops)
    {
        var next = input.ConsumeToken();
        if (next.HasValue && next.Value.Kind == TokenKind.Quoted)
        {
            var span = Spans.Of(next.Value);
            var text = next.Value.Span.Source!.Substring(span.Start + 1, span.Length - 2);
            return TokenListParserResult.Value(new NameSyntax(text, span), input, next.Remainder);
        }

        var (rest, covered) = (input, default(SourceSpan?));
        while (next.HasValue && next.Value.Kind == TokenKind.Word && !StopsAt(rest, stops))
        {
            covered = covered is { } soFar ? soFar.Cover(Spans.Of(next.Value)) : Spans.Of(next.Value);
            rest = next.Remainder;
            next = rest.ConsumeToken();
        }

        NoteStops(rest, stops, covered is not null);
        if (covered is not { } found)
        {
            return Fail(input);
        }

        FurthestFailure.NoteName(input.Position, rest.Position);
        return TokenListParserResult.Value(new NameSyntax(TextOf(input, rest, found), found), input, rest);
    }

    // Words with single blanks between, as nearly all are, stand in the source as they are wanted.
    private static string TextOf(TokenList<TokenKind> from, TokenList<TokenKind> to, SourceSpan covered)
    {
        var source = from.ConsumeToken().Value.Span.Source!;
        var (letters, words) = (0, 0);
        for (var at = from; at.Position < to.Position; words++)
        {
            var next = at.ConsumeToken();
            letters += next.Value.Span.Length;
            at = next.Remainder;
        }

        return letters + words - 1 == covered.Length && !source.AsSpan(covered.Start, covered.Length).Contains('\t')
            ? source.Substring(covered.Start, covered.Length)
            : string.Join(' ', from.Take(to.Position - from.Position).Select(token => token.ToStringValue()));
    }

    private static TokenListParserResult<TokenKind, NameSyntax> Fail(TokenList<TokenKind> input)
    {
        FurthestFailure.Note(input.Position, Expected);
        return TokenListParserResult.Empty<TokenKind, NameSyntax>(input);
    }

    private static void NoteStops(TokenList<TokenKind> rest, Stop[] stops, bool named)
    {
        if (named && !StopsAt(rest, stops))
        {
            foreach (var stop in stops)
            {
                FurthestFailure.Note(rest.Position, stop.Expected);
            }
        }
    }

    private static bool StopsAt(TokenList<TokenKind> at, Stop[] stops)
    {
        foreach (var stop in stops)
        {
            if (StartsWith(at, stop.Words))
            {
                return true;
            }
        }

        return false;
    }

    private static bool StartsWith(TokenList<TokenKind> at, string[] words)
    {
        foreach (var word in words)
        {
            var next = at.ConsumeToken();
            if (!next.HasValue || !next.Value.Span.EqualsValueIgnoreCase(word))
            {
                return false;
            }

            at = next.Remainder;
        }

        return true;
    }

    private readonly record struct Stop(string[] Words, Expectation Expected);
}
