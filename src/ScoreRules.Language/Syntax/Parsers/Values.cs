using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;
using Superpower;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>Numbers, values with doubt, dates and versions.</summary>
internal static class Values
{
    private static readonly TokenListParser<TokenKind, Token<TokenKind>> NumberToken = Primitives.Token(TokenKind.Number, "a number");

    private static readonly Expectation AUnit = new("a unit", Literal: false);

    private static readonly TokenListParser<TokenKind, Token<TokenKind>> UnitWord = input =>
    {
        var next = input.ConsumeToken();
        var fits = next.HasValue && (next.Value.Kind is TokenKind.Percent or TokenKind.Degree
            || (next.Value.Kind == TokenKind.Word && Units.IsUnit(Spans.Letters(next.Value))));
        if (fits)
        {
            return TokenListParserResult.Value(next.Value, input, next.Remainder);
        }

        FurthestFailure.Note(input.Position, AUnit);
        return TokenListParserResult.Empty<TokenKind, Token<TokenKind>>(input);
    };

    // Parsers are made once and kept: what stands inside a query or a Then would be made anew for every number.
    private static readonly TokenListParser<TokenKind, Token<TokenKind>> OptionalUnit = UnitWord.OptionalOrDefault();

    private static readonly TokenListParser<TokenKind, SourceSpan> PercentSign = Primitives.Token(TokenKind.Percent, "%", literal: true).Select(Spans.Of);

    private static readonly TokenListParser<TokenKind, SourceSpan> DegreeSign =
        Primitives.Token(TokenKind.Degree, "°", literal: true).Select(Spans.Of).Or(Primitives.Phrase("degrees"));

    private static readonly TokenListParser<TokenKind, SourceSpan> PointsWord = Primitives.Phrase("points").Or(Primitives.Phrase("point"));

    /// <summary>A bare number.</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Number { get; } =
        NumberToken.Select(token => new QuantitySyntax(Units.Parse(Spans.Letters(token)), null, Spans.Of(token)));

    /// <summary>A number with the unit that follows it, if one does.</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Quantity { get; } =
        from number in Number
        from unit in OptionalUnit
        select unit.Span.Source is null ? number : With(number, Units.Canonical(Spans.Letters(unit)), Spans.Of(unit));

    /// <summary>A number that must carry % .</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Percent { get; } =
        from number in Number
        from sign in PercentSign
        select With(number, "%", sign);

    /// <summary>A number that must carry ° (or the word degrees).</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Degrees { get; } =
        from number in Number
        from sign in DegreeSign
        select With(number, "°", sign);

    /// <summary>A number in points.</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Points { get; } =
        from number in Number
        from word in PointsWord
        select With(number, "points", word);

    /// <summary>A number of times.</summary>
    public static TokenListParser<TokenKind, QuantitySyntax> Times { get; } = Number.Then(number => Primitives.Phrase("times").Select(_ => number));

    private static readonly TokenListParser<TokenKind, QuantitySyntax?> Likely = Primitives.Phrase("likely").IgnoreThen(Quantity).Maybe();

    private static readonly TokenListParser<TokenKind, (QuantitySyntax? Spread, QuantitySyntax? High, QuantitySyntax? Likely)> Doubt =
        Primitives.Phrase("give or take").IgnoreThen(Quantity).Select(spread => (Spread: (QuantitySyntax?)spread, High: (QuantitySyntax?)null, Likely: (QuantitySyntax?)null))
            .Or(from high in Primitives.Phrase("to").IgnoreThen(Quantity)
                from likely in Likely
                select (Spread: (QuantitySyntax?)null, High: (QuantitySyntax?)high, Likely: likely))
            .OptionalOrDefault();

    /// <summary>Any value, with its doubt.</summary>
    public static TokenListParser<TokenKind, ValueSyntax> Value { get; } =
        Primitives.Phrase("unknown").Select(span => new ValueSyntax(span, null, null, null, null))
            .Or(from first in Quantity
                from doubt in Doubt
                select Make(first, doubt.Spread, doubt.High, doubt.Likely));

    // Any word may be a misspelt month; "to" is none, and begins another thought.
    private static readonly TokenListParser<TokenKind, Token<TokenKind>> AnyMonth = Primitives.Token(TokenKind.Word, "a month, such as May");

    private static TokenListParser<TokenKind, Token<TokenKind>> Month { get; } = input =>
    {
        var read = AnyMonth(input);
        if (!read.HasValue || !read.Value.Span.EqualsValueIgnoreCase("to"))
        {
            return read;
        }

        FurthestFailure.Note(input.Position, new Expectation("a month, such as May", Literal: false));
        return TokenListParserResult.Empty<TokenKind, Token<TokenKind>>(input);
    };

    /// <summary>A day, such as <c>4 May 2031</c>.</summary>
    public static TokenListParser<TokenKind, DateSyntax> Date { get; } =
        from day in Primitives.Token(TokenKind.Number, "a day, such as 4 May 2031")
        from month in Month
        from year in Primitives.Token(TokenKind.Number, "a year, such as 2031")
        select new DateSyntax(day.ToStringValue(), month.ToStringValue(), year.ToStringValue(), Spans.Of(day).Cover(Spans.Of(year)));

    /// <summary>A version, such as <c>3</c> or <c>3.0.0</c>.</summary>
    public static TokenListParser<TokenKind, NameSyntax> Version { get; } =
        Primitives.Token(TokenKind.Version, "a version, such as 3 or 3.0.0").Or(Primitives.Token(TokenKind.Number, "a version, such as 3 or 3.0.0"))
            .Select(token => new NameSyntax(token.ToStringValue(), Spans.Of(token)));

    private static QuantitySyntax With(QuantitySyntax number, string unit, SourceSpan place) => number with { Unit = unit, Span = number.Span.Cover(place) };

    private static ValueSyntax Make(QuantitySyntax first, QuantitySyntax? spread, QuantitySyntax? high, QuantitySyntax? likely)
    {
        SourceSpan last = (likely ?? high ?? spread ?? first).Span;
        return new ValueSyntax(first.Span.Cover(last), first, spread, high, likely);
    }
}
