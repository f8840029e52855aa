using ScoreRules.Language.Syntax.Nodes;
using Superpower;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>The claims of <c>expect</c> and <c>ask why</c>.</summary>
internal static class ClaimParsers
{
    private static readonly TokenListParser<TokenKind, (ClaimKind Kind, QuantitySyntax? Amount, NameSyntax[] Objects)> AfterIs =
        Named("above", ClaimKind.Above)
            .Or(Primitives.Phrase("at least").IgnoreThen(Values.Points).Then(points => Named("above", ClaimKind.AtLeastAbove, points)))
            .Or(Primitives.Phrase("within").IgnoreThen(Values.Points).Then(points => Named("of", ClaimKind.Within, points)))
            .Or(Named("in", ClaimKind.InTier))
            .Or(Named("no higher than", ClaimKind.NoHigher))
            .Or(Named("no lower than", ClaimKind.NoLower))
            .Or(Primitives.Phrase("left out").IgnoreThen(Primitives.Phrase("by").IgnoreThen(Names.Single).Select(name => new[] { name }).OptionalOrDefault([]))
                .Select(names => (ClaimKind.LeftOut, (QuantitySyntax?)null, names)))
            .Or(Named("called", ClaimKind.Called))
            .Or(Named("other than", ClaimKind.OtherThan));

    private static readonly TokenListParser<TokenKind, (ClaimKind Kind, QuantitySyntax? Amount, NameSyntax[] Objects)> AfterHas =
        from kind in Primitives.Phrase("at least").Select(_ => ClaimKind.HasAtLeast).Or(Primitives.Phrase("at most").Select(_ => ClaimKind.HasAtMost))
        from amount in Values.Quantity
        from word in Primitives.Phrase("in")
        from tiers in Names.List
        select (kind, (QuantitySyntax?)amount, tiers);

    /// <summary>A claim.</summary>
    public static TokenListParser<TokenKind, ClaimSyntax> Claim { get; } =
        from subject in Names.Single
        from rest in Primitives.Token(TokenKind.Is, "is", literal: true).IgnoreThen(AfterIs).Or(Primitives.Token(TokenKind.Has, "has", literal: true).IgnoreThen(AfterHas))
        from targets in Names.ForTargets
        select new ClaimSyntax(rest.Kind, subject, rest.Amount, [.. rest.Objects], [.. targets]);

    /// <summary><c>A is above B</c>, with targets or without.</summary>
    public static TokenListParser<TokenKind, OrderSyntax> Order { get; } =
        from first in Names.Single
        from word in Primitives.Token(TokenKind.Is, "is", literal: true)
        from above in Primitives.Phrase("above")
        from second in Names.Single
        from targets in Names.ForTargets
        select new OrderSyntax(first, second, targets);

    private static TokenListParser<TokenKind, (ClaimKind Kind, QuantitySyntax? Amount, NameSyntax[] Objects)> Named(string words, ClaimKind kind, QuantitySyntax? amount = null) =>
        Primitives.Phrase(words).IgnoreThen(Names.Single).Select(name => (kind, amount, new[] { name }));
}
