using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Questions to a ranking: <c>ask</c> and what is asked.</summary>
internal static class AskGrammar
{
    public static readonly ClauseSpec<NameSyntax> ToTier = new("to", Names.Single);

    public static readonly HeadSpec Why = Head("ask why", ClaimParsers.Order);
    public static readonly HeadSpec WhyNot = Head("ask why not",
        from statement in Names.Single
        from word in Primitives.Token(TokenKind.For, "for", literal: true)
        from movement in Names.Single
        select new WhyNotSyntax(statement, movement));

    public static readonly HeadSpec HowFirmly = Head("ask how firmly", ClaimParsers.Order);
    public static readonly HeadSpec WhatLifts = Head("ask what lifts",
        from movement in Names.Until("to")
        from tier in Primitives.Phrase("to").IgnoreThen(Names.Single).Maybe()
        from targets in Names.ForTargets
        select new LiftSyntax(movement, tier, targets), ToTier.May());

    public static readonly HeadSpec WhatIsLost = Head("ask what is lost without",
        from kit in Names.List
        from targets in Names.ForTargets
        select new LossSyntax(kit, targets), QuestionGrammar.UsingProfile.May());

    public static readonly HeadSpec WhatToBuy = Head("ask what to buy", Names.ForTargets, QuestionGrammar.UsingProfile.May());
    public static readonly HeadSpec SoreJoint = Head("ask what a sore",
        from joint in Names.Until("costs")
        from word in Primitives.Phrase("costs")
        from targets in Names.ForTargets
        select new SoreSyntax(joint, targets));

    public static readonly HeadSpec WhatIsForgotten = Head("ask what is forgotten", Names.ForTargets);
    public static readonly HeadSpec WhatIsMisplaced = Head("ask what is misplaced", Names.ForTargets);
    public static readonly HeadSpec WhatIsShaky = Head("ask what is shaky", Names.ForTargets);
    public static readonly HeadSpec WhereIsShaky = Head("ask where", Names.Single.Then(name => Primitives.Phrase("is shaky").Select(_ => name)));
    public static readonly HeadSpec WhatRestsOn = Head("ask what rests on", Names.Single);
    public static readonly HeadSpec NewStudy = Head("ask what a study of",
        from first in Names.Until("against")
        from against in Primitives.Phrase("against")
        from second in Names.Until("would change")
        from change in Primitives.Phrase("would change")
        from targets in Names.ForTargets
        select new OrderSyntax(first, second, targets));

    /// <summary>All of them, with the question that each asks.</summary>
    public static readonly ImmutableArray<(HeadSpec Head, QuestionKind Kind)> All =
    [
        (Why, QuestionKind.Why), (WhyNot, QuestionKind.WhyNot), (HowFirmly, QuestionKind.HowFirmly), (WhatLifts, QuestionKind.WhatLifts),
        (WhatIsLost, QuestionKind.WhatIsLost), (WhatToBuy, QuestionKind.WhatToBuy), (SoreJoint, QuestionKind.SoreJoint),
        (WhatIsForgotten, QuestionKind.WhatIsForgotten), (WhatIsMisplaced, QuestionKind.WhatIsMisplaced),
        (WhatIsShaky, QuestionKind.WhatIsShaky), (WhereIsShaky, QuestionKind.WhereIsShaky), (WhatRestsOn, QuestionKind.WhatRestsOn), (NewStudy, QuestionKind.NewStudy),
    ];

    private static HeadSpec Head<T>(string words, TokenListParser<TokenKind, T> rest, params ClauseUse[] lines) =>
        new() { FirstLine = new ClauseSpec<T>(words, rest), Lines = [.. lines, .. Uniform.Lines] };
}
