using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Statements about people, choices and expectations: profile, choose, expect.</summary>
internal static class QuestionGrammar
{
    public static readonly ClauseSpec<NameSyntax[]> Kit = new("kit", Names.List);
    public static readonly ClauseSpec<NameSyntax> Sore = new("sore", Names.Single);
    public static readonly ClauseSpec<NameSyntax[]> Audience = new("audience", Names.List);
    public static readonly ClauseSpec<ConditionLineSyntax> AvoidWhen = new("avoid when", Conditions.Line);
    public static readonly ClauseSpec<ConditionLineSyntax> PreferWhen = new("prefer when", Conditions.Line);

    public static readonly ClauseSpec<NameSyntax[]> Cover = new("cover", Names.List);
    public static readonly ClauseSpec<(QuantitySyntax Count, ConditionLineSyntax Line)> Include =
        new("include", Values.Number.Then(count => Primitives.Phrase("when").IgnoreThen(Conditions.Line).Select(line => (count, line))));

    public static readonly ClauseSpec<(NameSyntax Attribute, ValueSyntax Limit)> Total = new("total",
        from attribute in Names.Single
        from word in Primitives.Token(TokenKind.Is, "is", literal: true)
        from most in Primitives.Phrase("at most")
        from limit in Values.Value
        select (attribute, limit));

    public static readonly ClauseSpec<QuantitySyntax> NoTwoAlike = new("no two more alike than", Values.Percent);
    public static readonly ClauseSpec<NameSyntax[]> NoTwoDifferOnlyBy = new("no two differ only by", Names.List);
    public static readonly ClauseSpec<NameSyntax> UsingProfile = new("using profile", Names.Single);

    public static readonly HeadSpec Profile = new()
    {
        DeclaresName = true,
        FirstLine = new ClauseSpec<NameSyntax>("profile", Names.Single),
        Lines = [Kit.May(), Sore.Repeat(), Audience.May(), AvoidWhen.Repeat(), PreferWhen.Repeat(), Reach.And.Repeat(), Reach.OrWhen.Repeat(), .. Uniform.Lines],
    };

    public static readonly HeadSpec Choose = new()
    {
        FirstLine = new ClauseSpec<(QuantitySyntax Count, NameSyntax[] Targets)>("choose",
            Values.Number.Then(count => Primitives.Token(TokenKind.For, "for", literal: true).IgnoreThen(Names.List).Select(targets => (count, targets)))),
        Lines =
        [
            Cover.May(), Include.Repeat(), Reach.And.Repeat(), Total.Repeat(), NoTwoAlike.May(), NoTwoDifferOnlyBy.Repeat(), UsingProfile.May(), .. Uniform.Lines,
        ],
    };

    public static readonly ClauseSpec<ClaimSyntax> ExpectHead = new("expect", ClaimParsers.Claim);
    public static readonly HeadSpec Expect = new() { FirstLine = ExpectHead, Lines = Uniform.Lines };
}
