using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Short ways to write the table of statements.</summary>
internal static class Texts
{
    /// <summary>Free text to the end of the line.</summary>
    public static TokenListParser<TokenKind, TextSyntax> Rest { get; } =
        Primitives.Token(TokenKind.Text, "some text").Select(token => new TextSyntax(token.ToStringValue(), Spans.Of(token)));

    /// <summary>"because" and free text.</summary>
    public static TokenListParser<TokenKind, TextSyntax> Because { get; } =
        Primitives.Token(TokenKind.Because, "because", literal: true).IgnoreThen(Rest);

    /// <summary>A kind of line whose rest is free text.</summary>
    public static ClauseSpec<TextSyntax> Text(string starter) => new(starter, Rest, ScanMode.Text);

    /// <summary>A kind of line of fixed words only.</summary>
    public static ClauseSpec<NoContent> Words(string starter) => new(starter, Primitives.Nothing);

    /// <summary>A line that must stand, once.</summary>
    public static ClauseUse Must(this ClauseSpec spec) => new(spec, Required: true, Once: true);

    /// <summary>A line that must stand and may be repeated.</summary>
    public static ClauseUse MustRepeat(this ClauseSpec spec) => new(spec, Required: true);

    /// <summary>A line that may stand, once.</summary>
    public static ClauseUse May(this ClauseSpec spec) => new(spec, Once: true);

    /// <summary>A line that may stand any number of times.</summary>
    public static ClauseUse Repeat(this ClauseSpec spec) => new(spec);
}
