using ScoreRules.Language.Syntax.Nodes;
using Superpower;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>Lines of the statement <c>tiers</c>.</summary>
internal static class TierParsers
{
    private static readonly TokenListParser<TokenKind, (TierCut Cut, QuantitySyntax? Amount)> From =
        Primitives.Phrase("from").IgnoreThen(Values.Points).Then(points =>
            Primitives.Phrase("above the benchmark").Select(_ => (TierCut.Above, (QuantitySyntax?)points))
                .Or(Primitives.Phrase("below the benchmark").Select(_ => (TierCut.Below, (QuantitySyntax?)points)))
                .OptionalOrDefault((TierCut.Score, points)));

    private static readonly TokenListParser<TokenKind, (TierCut Cut, QuantitySyntax? Amount)> Within =
        from word in Primitives.Phrase("within")
        from points in Values.Points
        from rest in Primitives.Phrase("of the benchmark")
        select (TierCut.Within, (QuantitySyntax?)points);

    private static readonly TokenListParser<TokenKind, (TierCut Cut, QuantitySyntax? Amount)> Top =
        Primitives.Phrase("the top").IgnoreThen(Values.Percent).Select(percent => (TierCut.Top, (QuantitySyntax?)percent));

    private static readonly TokenListParser<TokenKind, (TierCut Cut, QuantitySyntax? Amount)> Rest =
        Primitives.Phrase("the rest").Select(_ => (TierCut.Rest, (QuantitySyntax?)null));

    /// <summary>A tier's name and border.</summary>
    public static TokenListParser<TokenKind, TierSyntax> Line { get; } =
        from name in Names.Single
        from word in Primitives.Token(TokenKind.Is, "is", literal: true)
        from cut in From.Or(Within).Or(Top).Or(Rest)
        select new TierSyntax(name, cut.Cut, cut.Amount);

    /// <summary>A tier cut anew, or renamed with <c>is now called</c>.</summary>
    public static TokenListParser<TokenKind, ChangedTierSyntax> Changed { get; } =
        from name in Names.Single
        from word in Primitives.Token(TokenKind.Is, "is", literal: true)
        from said in From.Or(Within).Or(Top).Or(Rest).Select(cut => new ChangedTierSyntax(name, new TierSyntax(name, cut.Cut, cut.Amount), null))
            .Or(Primitives.Phrase("now called").IgnoreThen(Names.Single).Select(renamed => new ChangedTierSyntax(name, null, renamed)))
        select said;
}
