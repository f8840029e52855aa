using ScoreRules.Language.Text;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>From Superpower's positions to spans.</summary>
internal static class Spans
{
    /// <summary>The span of a token.</summary>
    public static SourceSpan Of(Token<TokenKind> token) => new(token.Span.Position.Absolute, token.Span.Length);

    /// <summary>The characters of a token.</summary>
    public static ReadOnlySpan<char> Letters(Token<TokenKind> token) => token.Span.Source.AsSpan(token.Span.Position.Absolute, token.Span.Length);
}
