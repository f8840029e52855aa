using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using Superpower;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>The smallest parsers; each tells <see cref="FurthestFailure"/> what it wanted when it does not fit.</summary>
internal static class Primitives
{
    /// <summary>One token of a kind.</summary>
    public static TokenListParser<TokenKind, Token<TokenKind>> Token(TokenKind kind, string described, bool literal = false)
    {
        var expectation = new Expectation(described, literal);
        return input =>
        {
            var next = input.ConsumeToken();
            if (next.HasValue && next.Value.Kind == kind)
            {
                return TokenListParserResult.Value(next.Value, input, next.Remainder);
            }

            FurthestFailure.Note(input.Position, expectation);
            return TokenListParserResult.Empty<TokenKind, Token<TokenKind>>(input);
        };
    }

    /// <summary>Fixed words in a row; takes all of them or nothing, so alternatives need no backtracking.</summary>
    public static TokenListParser<TokenKind, SourceSpan> Phrase(string words)
    {
        var parts = words.Split(' ');
        var expectations = parts.Select((_, i) => new Expectation(string.Join(' ', parts[i..]), Literal: true)).ToArray();
        return input =>
        {
            var (rest, span) = (input, default(SourceSpan));
            for (var i = 0; i < parts.Length; i++)
            {
                var next = rest.ConsumeToken();
                if (!next.HasValue || next.Value.Kind == TokenKind.Quoted || !next.Value.Span.EqualsValueIgnoreCase(parts[i]))
                {
                    FurthestFailure.Note(rest.Position, expectations[i]);
                    return TokenListParserResult.Empty<TokenKind, SourceSpan>(input);
                }

                span = i == 0 ? Spans.Of(next.Value) : span.Cover(Spans.Of(next.Value));
                rest = next.Remainder;
            }

            return TokenListParserResult.Value(span, input, rest);
        };
    }

    /// <summary>A comma between two things of a list.</summary>
    public static TokenListParser<TokenKind, Token<TokenKind>> Comma { get; } = Token(TokenKind.Comma, ",", literal: true);

    /// <summary>One or more things with commas between; runs to where no comma follows.</summary>
    public static TokenListParser<TokenKind, T[]> CommaList<T>(this TokenListParser<TokenKind, T> item) =>
        input =>
        {
            var next = item(input);
            if (!next.HasValue)
            {
                return TokenListParserResult.CastEmpty<TokenKind, T, T[]>(next);
            }

            var (first, rest) = (next.Value, default(List<T>));
            while (Comma(next.Remainder) is { HasValue: true } comma)
            {
                next = item(comma.Remainder);
                if (!next.HasValue)
                {
                    return TokenListParserResult.CastEmpty<TokenKind, T, T[]>(next);
                }

                (rest ??= []).Add(next.Value);
            }

            return TokenListParserResult.Value<TokenKind, T[]>(rest is null ? [first] : [first, .. rest], input, next.Remainder);
        };

    /// <summary>A result that may be missing; for reference types.</summary>
    public static TokenListParser<TokenKind, T?> Maybe<T>(this TokenListParser<TokenKind, T> parser)
        where T : class =>
        parser.Select(value => (T?)value).OptionalOrDefault();

    /// <summary>Nothing: for clauses whose starter says it all.</summary>
    public static TokenListParser<TokenKind, NoContent> Nothing { get; } = input => TokenListParserResult.Value(default(NoContent), input, input);
}
