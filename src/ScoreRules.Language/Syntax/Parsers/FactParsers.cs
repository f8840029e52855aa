using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;
using Superpower;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>Facts of a movement: attributes, angles, directions, measured pairs.</summary>
internal static class FactParsers
{
    private static readonly TokenListParser<TokenKind, OperandSyntax[]> ListOrNothing =
        Primitives.Phrase("nothing").Select(_ => Array.Empty<OperandSyntax>())
            .Or(Primitives.Phrase("unknown").Select(span => new[] { new OperandSyntax(new ValueSyntax(span, null, null, null, null), null) }))
            .Or(Names.List.Select(names => names.Select(name => new OperandSyntax(null, name)).ToArray()));

    // Made once: inside the query below it would be made anew for every fact.
    private static readonly TokenListParser<TokenKind, (bool IsList, OperandSyntax[] Operands)> Told =
        Primitives.Token(TokenKind.Is, "is", literal: true).IgnoreThen(Conditions.Operand).Select(operand => (IsList: false, Operands: new[] { operand }))
            .Or(Primitives.Token(TokenKind.Has, "has", literal: true).IgnoreThen(ListOrNothing).Select(operands => (IsList: true, Operands: operands)));

    private static readonly TokenListParser<TokenKind, FactSyntax> Fact =
        from attribute in Names.Single
        from rest in Told
        from targets in Names.ForTargets
        select new FactSyntax(attribute, rest.IsList, [.. rest.Operands], [.. targets], SpanOf(attribute, rest.Operands));

    private static readonly TokenListParser<TokenKind, SourceSpan> To = Primitives.Phrase("to");

    /// <summary>Facts with commas between.</summary>
    public static TokenListParser<TokenKind, FactSyntax[]> Line { get; } = Fact.CommaList();

    /// <summary>Kept angles with commas between.</summary>
    public static TokenListParser<TokenKind, AngleSyntax[]> Angles { get; } =
        (from joint in Names.Single
         from angle in Values.Degrees
         select new AngleSyntax(joint, angle, null)).CommaList();

    /// <summary>Angles moved through, with commas between.</summary>
    public static TokenListParser<TokenKind, AngleSyntax[]> Turns { get; } =
        (from joint in Names.Single
         from start in Values.Quantity
         from to in To
         from end in Values.Degrees
         select new AngleSyntax(joint, start, end)).CommaList();

    /// <summary>Distances in directions.</summary>
    public static TokenListParser<TokenKind, DirectionSyntax[]> Directions { get; } =
        (from distance in Values.Quantity
         from direction in Names.Single
         select new DirectionSyntax(distance, direction)).CommaList();

    /// <summary>Quantities at other quantities.</summary>
    public static TokenListParser<TokenKind, PairSyntax[]> Pairs { get; } =
        (from value in Values.Quantity
         from word in Primitives.Phrase("at")
         from at in Values.Quantity
         select new PairSyntax(value, at)).CommaList();

    private static SourceSpan SpanOf(NameSyntax attribute, OperandSyntax[] operands) =>
        operands.Length == 0 ? attribute.Span : attribute.Span.Cover(operands[^1].Span);
}
