using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Statements about what counts and how much: criterion and weights.</summary>
internal static class ScoringGrammar
{
    /// <summary>What stands behind <c>counts</c>.</summary>
    public static readonly TokenListParser<TokenKind, WeightSyntax> WeightParser =
        from value in Primitives.Phrase("by weights").Select(_ => (ValueSyntax?)null).Or(Values.Value.Select(value => (ValueSyntax?)value))
        from targets in Names.ForTargets
        select new WeightSyntax(value, [.. targets]);

    public static readonly ClauseSpec<WeightSyntax> Counts = new("counts", WeightParser);

    public static readonly ClauseSpec<ReadsSyntax> Reads = new("reads",
        from attribute in Names.Single
        from targets in Names.ForTargets
        select new ReadsSyntax(attribute, [.. targets]));

    public static readonly ClauseSpec<WorthPointSyntax[]> Worth = new("worth", Point().CommaList());
    public static readonly ClauseSpec<QuantitySyntax> UnknownIsWorth = new("unknown is worth", Values.Percent);

    public static readonly ClauseSpec<NameSyntax[]> Order = new("order", Names.List);
    public static readonly ClauseSpec<ImportanceSyntax> Importance = new("", Compared());

    public static readonly HeadSpec Criterion = new()
    {
        DeclaresName = true,
        FirstLine = new ClauseSpec<NameSyntax>("criterion", Names.Single),
        Lines = [Counts.MustRepeat(), Reads.MustRepeat(), Worth.Must(), UnknownIsWorth.May(), .. Uniform.Lines],
    };

    public static readonly HeadSpec Weights = new()
    {
        FirstLine = Texts.Words("weights"),
        NamedLine = Importance,
        Lines = [Order.May(), Importance.Repeat(), .. Uniform.Lines],
        OneOf = [Order, Importance],
    };

    private static TokenListParser<TokenKind, WorthPointSyntax> Point() =>
        from worth in Values.Percent
        from step in Primitives.Phrase("at").Select(_ => false).Or(Primitives.Phrase("from").Select(_ => true))
        from at in Primitives.Phrase("the rest").Select(span => (At: (OperandSyntax?)null, Span: span))
            .Or(Conditions.Operand.Select(operand => (At: (OperandSyntax?)operand, operand.Span)))
        select new WorthPointSyntax(worth, step, at.At, SourceSpan.FromBounds(worth.Span.Start, at.Span.End));

    private static TokenListParser<TokenKind, ImportanceSyntax> Compared() =>
        from first in Names.Single
        from word in Primitives.Token(TokenKind.Is, "is", literal: true)
        from degree in Values.Number.Then(times => Primitives.Phrase("times as important as").Select(_ => new OperandSyntax(new ValueSyntax(times.Span, times, null, null, null), null)))
            .Or(Names.Until("more important than").Then(name => Primitives.Phrase("more important than").Select(_ => new OperandSyntax(null, name))))
        from second in Names.Single
        select new ImportanceSyntax(first, degree, second);
}
