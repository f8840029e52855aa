using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Text;
using Superpower;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>Condition lines: demands joined by "and" or by "or".</summary>
internal static class Conditions
{
    /// <summary>A value, or a name.</summary>
    public static TokenListParser<TokenKind, OperandSyntax> Operand { get; } =
        Values.Value.Select(value => new OperandSyntax(value, null)).Or(Names.Single.Select(name => new OperandSyntax(null, name)));

    /// <summary>A line of demands.</summary>
    public static TokenListParser<TokenKind, ConditionLineSyntax> Line { get; } = input => ParseLine(input);

    private static readonly TokenListParser<TokenKind, OperandSyntax[]> NameOperands =
        Names.List.Select(names => names.Select(name => new OperandSyntax(null, name)).ToArray());

    private static readonly TokenListParser<TokenKind, OperandSyntax[]> OneValue = Values.Value.Select(value => new OperandSyntax[] { new(value, null) });

    private static readonly TokenListParser<TokenKind, OperandSyntax[]> TwoValues =
        from low in Values.Quantity
        from and in Primitives.Token(TokenKind.And, "and", literal: true)
        from high in Values.Quantity
        select new OperandSyntax[] { Exactly(low), Exactly(high) };

    private static readonly TokenListParser<TokenKind, (Comparison Comparison, OperandSyntax[] Operands, bool OpensList)> AfterIs =
        Opened("at least", Comparison.AtLeast, OneValue)
            .Or(Opened("at most", Comparison.AtMost, OneValue))
            .Or(Opened("more than", Comparison.MoreThan, OneValue))
            .Or(Opened("less than", Comparison.LessThan, OneValue))
            .Or(Opened("between", Comparison.Between, TwoValues))
            .Or(Opened("one of", Comparison.OneOf, NameOperands))
            .Or(Opened("none of", Comparison.NoneOf, NameOperands))
            .Or(Opened("other than", Comparison.OtherThan, Operand.Select(operand => new[] { operand })))
            .Or(Opened("known", Comparison.Known, None))
            .Or(Opened("unknown", Comparison.Unknown, None))
            .Or(Operand.Select(operand => (Comparison.Is, new[] { operand }, false)));

    private static readonly TokenListParser<TokenKind, (Comparison Comparison, OperandSyntax[] Operands, bool OpensList)> AfterHas =
        Opened("any of", Comparison.HasAny, NameOperands)
            .Or(Opened("all of", Comparison.HasAll, NameOperands))
            .Or(Opened("none of", Comparison.HasNone, NameOperands))
            .Or(Names.Single.Select(name => (Comparison.HasAny, new[] { new OperandSyntax(null, name) }, false)));

    private static readonly TokenListParser<TokenKind, (Comparison Comparison, OperandSyntax[] Operands, bool OpensList)> Tail =
        Primitives.Token(TokenKind.Is, "is", literal: true).IgnoreThen(AfterIs)
            .Or(Primitives.Token(TokenKind.Has, "has", literal: true).IgnoreThen(AfterHas))
            .OptionalOrDefault((Comparison.Called, [], false));

    private static readonly TokenListParser<TokenKind, AtomSyntax> Atom =
        Names.Single.Then(subject => Tail.Select(tail => new AtomSyntax(subject, tail.Comparison, [.. tail.Operands], tail.OpensList, SpanOf(subject, tail.Operands))));

    private static TokenListParser<TokenKind, OperandSyntax[]> None => Primitives.Nothing.Select(_ => Array.Empty<OperandSyntax>());

    private static OperandSyntax Exactly(QuantitySyntax number) => new(new ValueSyntax(number.Span, number, null, null, null), null);

    private static SourceSpan SpanOf(NameSyntax subject, OperandSyntax[] operands) =>
        operands.Length == 0 ? subject.Span : subject.Span.Cover(operands[^1].Span);

    private static TokenListParser<TokenKind, (Comparison Comparison, OperandSyntax[] Operands, bool OpensList)> Opened(string words, Comparison comparison, TokenListParser<TokenKind, OperandSyntax[]> operands) =>
        Primitives.Phrase(words).IgnoreThen(operands).Select(found => (comparison, found, true));

    // A list runs to the end of its line, so that "has any of a, b and c" cannot be read two ways.
    private static bool IsList(AtomSyntax atom) =>
        atom.Comparison is Comparison.OneOf or Comparison.NoneOf or Comparison.HasAll or Comparison.HasNone || (atom.Comparison == Comparison.HasAny && atom.OpensList);

    private static void NoteOtherJoint(TokenList<TokenKind> rest, AtomSyntax last)
    {
        if (IsList(last))
        {
            FurthestFailure.Note(rest.Position, new Expectation(",", Literal: true));
        }
    }

    private static TokenListParserResult<TokenKind, ConditionLineSyntax> ParseLine(TokenList<TokenKind> input)
    {
        var first = Atom(input);
        if (!first.HasValue)
        {
            return TokenListParserResult.CastEmpty<TokenKind, AtomSyntax, ConditionLineSyntax>(first);
        }

        var atoms = ImmutableArray.CreateBuilder<AtomSyntax>();
        atoms.Add(first.Value);
        var anyOf = first.Remainder.ConsumeToken() is { HasValue: true, Value.Kind: TokenKind.Or };
        var joint = anyOf ? Primitives.Token(TokenKind.Or, "or", literal: true) : Primitives.Token(TokenKind.And, "and", literal: true);
        var rest = first.Remainder;
        while (!IsList(atoms[^1]) && joint(rest) is { HasValue: true } found)
        {
            var next = Atom(found.Remainder);
            if (!next.HasValue)
            {
                return TokenListParserResult.CastEmpty<TokenKind, AtomSyntax, ConditionLineSyntax>(next);
            }

            atoms.Add(next.Value);
            rest = next.Remainder;
        }

        NoteOtherJoint(rest, atoms[^1]);

        var span = atoms[0].Span.Cover(atoms[^1].Span);
        return TokenListParserResult.Value(new ConditionLineSyntax(atoms.ToImmutable(), anyOf, span), input, rest);
    }
}
