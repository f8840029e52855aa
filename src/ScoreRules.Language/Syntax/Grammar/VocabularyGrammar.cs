using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Statements that say what can be said: attribute, muscle, target, tiers, say.</summary>
internal static class VocabularyGrammar
{
    public static readonly ClauseSpec<(QuantitySyntax Low, QuantitySyntax High)> Rated = new("rated",
        from low in Values.Number
        from to in Primitives.Phrase("to")
        from high in Values.Number
        select (low, high));

    public static readonly ClauseSpec<NameSyntax> InUnit = new("in", Unit());
    public static readonly ClauseSpec<NameSyntax[]> OneOf = new("one of", Names.List);
    public static readonly ClauseSpec<NameSyntax[]> SomeOf = new("some of", Names.List);
    public static readonly ClauseSpec<NoContent> SomeOfTheMuscles = Texts.Words("some of the muscles");
    public static readonly ClauseSpec<NoContent> YesOrNo = Texts.Words("yes or no");
    public static readonly ClauseSpec<TextSyntax> DescribedAs = Texts.Text("described as");
    public static readonly ClauseSpec<(QuantitySyntax Step, TextSyntax Text)> Anchor = new("anchor", Values.Number.Then(step => Texts.Rest.Select(text => (step, text))), ScanMode.TextAfterNumber);
    public static readonly ClauseSpec<NameSyntax[]> AlsoKnownAs = new("also known as", Names.List);
    public static readonly ClauseSpec<NoContent> CountsForLikeness = Texts.Words("counts for likeness");
    public static readonly ClauseSpec<NoContent> AboutThePerson = Texts.Words("about the person");
    public static readonly ClauseSpec<TextSyntax> Latin = Texts.Text("latin");
    public static readonly ClauseSpec<NameSyntax[]> Crosses = new("crosses", Names.List);

    public static readonly ClauseSpec<ShareSyntax[]> MadeOf = new("made of", Shares());
    public static readonly ClauseSpec<NameSyntax> Benchmark = new("benchmark", Names.Single);
    public static readonly ClauseSpec<NameSyntax> PartOf = new("part of", Names.Single);

    public static readonly ClauseSpec<TierSyntax> Tier = new("", TierParsers.Line);
    public static readonly ClauseSpec<SaySyntax> SayHead = new("say", SayParser());

    /// <summary>What kind of value an attribute has: said once.</summary>
    public static readonly Alternatives KindOfValue = new("kind of value", [Rated, InUnit, OneOf, SomeOf, SomeOfTheMuscles, YesOrNo]);

    public static readonly HeadSpec Attribute = new()
    {
        DeclaresName = true,
        FirstLine = new ClauseSpec<NameSyntax>("attribute", Names.Single),
        Lines =
        [
            Rated.May(), InUnit.May(), OneOf.May(), SomeOf.May(), SomeOfTheMuscles.May(), YesOrNo.May(), DescribedAs.May(), Anchor.Repeat(),
            AlsoKnownAs.Repeat(), CountsForLikeness.May(), AboutThePerson.May(), .. Uniform.Lines,
        ],
        OneOf = KindOfValue.Lines,
        OnlyOne = [KindOfValue],
    };

    public static readonly HeadSpec Muscle = new()
    {
        DeclaresName = true,
        FirstLine = new ClauseSpec<NameSyntax>("muscle", Names.Single),
        Lines = [Latin.May(), Crosses.May(), AlsoKnownAs.Repeat(), DescribedAs.May(), .. Uniform.Lines],
    };

    public static readonly HeadSpec Target = new()
    {
        DeclaresName = true,
        FirstLine = new ClauseSpec<NameSyntax>("target", Names.Single),
        Lines = [MadeOf.Must(), Benchmark.Must(), PartOf.May(), DescribedAs.May(), .. Uniform.Lines],
    };

    public static readonly HeadSpec Tiers = new() { FirstLine = Texts.Words("tiers"), NamedLine = Tier, Lines = [Tier.MustRepeat(), .. Uniform.Lines] };
    public static readonly HeadSpec Say = new() { FirstLine = SayHead, DeclaresName = true, Lines = Uniform.Lines };

    private static TokenListParser<TokenKind, NameSyntax> Unit() =>
        Names.Single.Or(Primitives.Token(TokenKind.Percent, "%", literal: true).Or(Primitives.Token(TokenKind.Degree, "°", literal: true))
            .Select(token => new NameSyntax(token.ToStringValue(), Spans.Of(token))));

    private static TokenListParser<TokenKind, ShareSyntax[]> Shares() =>
        (from name in Names.Single
         from parts in Values.Number
         from word in Primitives.Phrase("parts").Or(Primitives.Phrase("part"))
         select new ShareSyntax(name, parts)).CommaList();

    private static readonly TokenListParser<TokenKind, bool> AsImportant = Primitives.Phrase("as important").Select(_ => true).OptionalOrDefault();

    /// <summary>What stands behind <c>say</c>.</summary>
    public static TokenListParser<TokenKind, SaySyntax> SayParser() =>
        from name in Names.Single
        from means in Primitives.Token(TokenKind.Means, "means", literal: true)
        from bound in Primitives.Phrase("at least").Select(_ => SayBound.AtLeast).Or(Primitives.Phrase("within").Select(_ => SayBound.Within)).OptionalOrDefault(SayBound.Exactly)
        from value in Values.Value
        from importance in AsImportant
        select new SaySyntax(name, bound, value, importance);
}
