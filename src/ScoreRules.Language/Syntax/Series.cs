using Superpower;
using Superpower.Model;

namespace ScoreRules.Language.Syntax;

/// <summary>
/// What <c>from ... from ... select</c> means for parsers of this language: one after the other. Superpower's own would make the
/// second parser anew each time the first has read something, which is most of the work for lines as short as ours. It is taken
/// instead of that one because it stands in a namespace round its users.
/// </summary>
internal static class Series
{
    /// <summary>Two parsers in a row; the failure of either is that of both.</summary>
    public static TokenListParser<TokenKind, TResult> SelectMany<TFirst, TSecond, TResult>(
        this TokenListParser<TokenKind, TFirst> first, Func<TFirst, TokenListParser<TokenKind, TSecond>> second, Func<TFirst, TSecond, TResult> project) =>
        input =>
        {
            var left = first(input);
            if (!left.HasValue)
            {
                return TokenListParserResult.CastEmpty<TokenKind, TFirst, TResult>(left);
            }

            var right = second(left.Value)(left.Remainder);
            return right.HasValue
                ? TokenListParserResult.Value(project(left.Value, right.Value), input, right.Remainder)
                : TokenListParserResult.CastEmpty<TokenKind, TSecond, TResult>(right);
        };
}
