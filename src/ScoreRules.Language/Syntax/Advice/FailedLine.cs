using ScoreRules.Language.Syntax.Layout;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A line that did not parse, with all that is known about why.</summary>
internal sealed record FailedLine(ClauseSpec Spec, LineView Line, List<Token<TokenKind>> Tokens, FurthestFailure Failure, string Within, string? Section)
{
    /// <summary>Index of the token that did not fit; the number of tokens when the line stopped too early.</summary>
    public int Index => Math.Clamp(Failure.Index, 0, Tokens.Count);

    /// <summary>Whether the line stopped too early.</summary>
    public bool AtEnd => Index >= Tokens.Count;

    /// <summary>The token that did not fit; its kind is <see cref="TokenKind.Bad"/> at the end of the line.</summary>
    public Token<TokenKind> Token => AtEnd ? new Token<TokenKind>(TokenKind.Bad, default) : Tokens[Index];

    /// <summary>What would have fitted.</summary>
    public IReadOnlyList<Expectation> Expected => Failure.Expected;

    /// <summary>Whether it is a line of a condition.</summary>
    public bool IsCondition => Spec.Starter is "when" or "and" or "or when" or "unless" or "avoid when" or "prefer when" or "include";

    /// <summary>Whether literal words would have fitted.</summary>
    public bool Wants(string words) => Expected.Contains(new Expectation(words, Literal: true));

    /// <summary>Kind of the token <paramref name="back"/> places before the one that did not fit.</summary>
    public TokenKind KindBefore(int back = 1) => Index - back >= 0 ? Tokens[Index - back].Kind : TokenKind.Bad;

    /// <summary>Whether these words stand right behind the token that did not fit.</summary>
    public bool Follows(string words)
    {
        var parts = words.Split(' ');
        return Index + parts.Length < Tokens.Count && Enumerable.Range(0, parts.Length).All(i => Tokens[Index + 1 + i].Span.EqualsValueIgnoreCase(parts[i]));
    }

    /// <summary>From the token that did not fit through the words that follow it.</summary>
    public SourceSpan Through(string words) => SpanOf(Index).Cover(SpanOf(Index + words.Split(' ').Length));

    /// <summary>The place of a token.</summary>
    public SourceSpan SpanOf(int index) => index < Tokens.Count ? Parsers.Spans.Of(Tokens[index]) : End;

    /// <summary>The gap behind the last token.</summary>
    public SourceSpan End => new(Tokens.Count > 0 ? Parsers.Spans.Of(Tokens[^1]).End : Line.Content.End, 0);
}
