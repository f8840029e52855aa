using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;
using Superpower;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>Numbers, values with doubt, dates and versions.</summary>
internal static class Values
{
    private static readonly TokenListParser<TokenKind, Token<TokenKind>> NumberToken = Primitives.Token(TokenKind.Number, "a number");

    private static readonly TokenListParser<TokenKind, Token<TokenKind>> UnitWord = input =>
    {
        var next = input.ConsumeToken();
        var fits = next.HasValue && (next.Value.Kind is TokenKind.Percent or TokenKind.Degree
            || (next.Value.Kind == TokenKind.Word && Units.IsUnit(next.Value.ToStringValue())));
        return fits
            ? TokenListParserResult.Value(next.Value, input, next.Remainder)
            : TokenListParserResult.Empty<TokenKind, Token<TokenKind>>(input);
    };

    /// <summary>A bare number.</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Number { get; } =
        NumberToken.Select(token => new QuantitySyntax(Units.Parse(token.ToStringValue()), null, Spans.Of(token)));

    /// <summary>A number with the unit that follows it, if one does.</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Quantity { get; } =
        Number.Then(number => UnitWord.OptionalOrDefault().Select(unit =>
            unit.Kind == default && unit.Span.Source is null
                ? number
                : number with { Unit = Units.Canonical(unit.ToStringValue()), Span = number.Span.Cover(Spans.Of(unit)) }));

    /// <summary>A number that must carry % .</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Percent { get; } =
        Number.Then(number => Primitives.Token(TokenKind.Percent, "%", literal: true)
            .Select(sign => number with { Unit = "%", Span = number.Span.Cover(Spans.Of(sign)) }));

    /// <summary>A number that must carry ° (or the word degrees).</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Degrees { get; } =
        Number.Then(number => Primitives.Token(TokenKind.Degree, "°", literal: true).Select(Spans.Of).Or(Primitives.Phrase("degrees"))
            .Select(sign => number with { Unit = "°", Span = number.Span.Cover(sign) }));

    /// <summary>A number in points.</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Points { get; } =
        Number.Then(number => Primitives.Phrase("points").Or(Primitives.Phrase("point"))
            .Select(word => number with { Unit = "points", Span = number.Span.Cover(word) }));

    /// <summary>Any value, with its doubt.</summary>
    public static TokenListParser<TokenKind, ValueSyntax> Value { get; } =
        Primitives.Phrase("unknown").Select(span => new ValueSyntax(span, null, null, null, null))
            .Or(Quantity.Then(Tail));

    /// <summary>A day, such as <c>4 May 2031</c>.</summary>
    public static TokenListParser<TokenKind, DateSyntax> Date { get; } =
        from day in Primitives.Token(TokenKind.Number, "a day, such as 4 May 2031")
        from month in Primitives.Token(TokenKind.Word, "a month, such as May")
        from year in Primitives.Token(TokenKind.Number, "a year, such as 2031")
        select new DateSyntax(day.ToStringValue(), month.ToStringValue(), year.ToStringValue(), Spans.Of(day).Cover(Spans.Of(year)));

    /// <summary>A version, such as <c>3</c> or <c>3.0.0</c>.</summary>
    public static TokenListParser<TokenKind, NameSyntax> Version { get; } =
        Primitives.Token(TokenKind.Version, "a version, such as 3 or 3.0.0").Or(Primitives.Token(TokenKind.Number, "a version, such as 3 or 3.0.0"))
            .Select(token => new NameSyntax(token.ToStringValue(), Spans.Of(token)));

    private static TokenListParser<TokenKind, ValueSyntax> Tail(QuantitySyntax first) =>
        Primitives.Phrase("give or take").IgnoreThen(Quantity).Select(spread => Make(first, spread, null, null))
            .Or(Primitives.Phrase("to").IgnoreThen(Quantity).Then(high =>
                Primitives.Phrase("likely").IgnoreThen(Quantity).Select(likely => Make(first, null, high, likely))
                    .Or(Superpower.Parse.Return<TokenKind, ValueSyntax>(Make(first, null, high, null)))))
            .Or(Superpower.Parse.Return<TokenKind, ValueSyntax>(Make(first, null, null, null)));

    private static ValueSyntax Make(QuantitySyntax first, QuantitySyntax? spread, QuantitySyntax? high, QuantitySyntax? likely)
    {
        SourceSpan last = (likely ?? high ?? spread ?? first).Span;
        return new ValueSyntax(first.Span.Cover(last), first, spread, high, likely);
    }
}
