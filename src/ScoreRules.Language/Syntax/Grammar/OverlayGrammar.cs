using System.Collections.Frozen;
using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>
/// Statements with which a house changes the house it builds on. <c>change</c> takes the lines of the kind it changes, none of
/// them compulsory. A caution can be neither changed nor dropped: it is read all the same, so that the refusal can say so.
/// </summary>
internal static class OverlayGrammar
{
    public static readonly ClauseSpec<QuantitySyntax> Points = new("points", Values.Points);
    public static readonly ClauseSpec<NameSyntax> NeverAbove = new("never above", Names.Single);
    public static readonly ClauseSpec<NameSyntax> NeverBelow = new("never below", Names.Single);

    /// <summary>A new weight, or so many times the old one.</summary>
    public static readonly ClauseSpec<ChangedWeightSyntax> Counts = new("counts",
        Primitives.Phrase("half as much").Select(span => new ChangedWeightSyntax(new QuantitySyntax(0.5, null, span), null))
            .Or(Primitives.Phrase("twice as much").Select(span => new ChangedWeightSyntax(new QuantitySyntax(2, null, span), null)))
            .Or(Values.Times.Try().Then(times => Primitives.Phrase("as much").Select(_ => new ChangedWeightSyntax(times, null))))
            .Or(ScoringGrammar.WeightParser.Select(weight => new ChangedWeightSyntax(null, weight))));

    /// <summary>A tier cut anew, or renamed: <c>Second string is now called Reserve</c>.</summary>
    public static readonly ClauseSpec<ChangedTierSyntax> Tier = new("", TierParsers.Changed);

    private static readonly TokenListParser<TokenKind, NameSyntax?> Name = Names.Single.Select(name => (NameSyntax?)name);
    private static readonly TokenListParser<TokenKind, NameSyntax?> NoName = Primitives.Nothing.Select(_ => (NameSyntax?)null);

    private static readonly (string Kind, HeadSpec? Of, TokenListParser<TokenKind, NameSyntax?> Name)[] Kinds =
    [
        ("attribute", VocabularyGrammar.Attribute, Name), ("target", VocabularyGrammar.Target, Name), ("tiers", VocabularyGrammar.Tiers, NoName),
        ("criterion", ScoringGrammar.Criterion, Name), ("call", RuleGrammar.Call, Name), ("work out", RuleGrammar.WorkOut, Name),
        ("rule", null, Name), ("study", EvidenceGrammar.Study, Name), ("movement", MovementGrammar.Movement, Name),
        ("profile", QuestionGrammar.Profile, Name), ("evidence", EvidenceGrammar.Evidence, NoName), ("ruleset", HouseGrammar.Ruleset, Names.Single.Maybe()),
        ("weights", ScoringGrammar.Weights, NoName),
    ];

    private static readonly (HeadSpec Head, OverlayKind Kind)[] Heads =
    [
        .. Kinds.Select(kind => (Change(kind), new OverlayKind(kind.Kind, kind.Of, IsDrop: false))),
        (new HeadSpec { FirstLine = new ClauseSpec<SaySyntax>("change say", VocabularyGrammar.SayParser()), Lines = Uniform.Lines }, new OverlayKind("say", VocabularyGrammar.Say, IsDrop: false)),
        (Refused("change caution"), new OverlayKind("caution", RuleGrammar.Caution, IsDrop: false)),
        .. Kinds.Select(kind => (Drop($"drop {kind.Kind}", kind.Name), new OverlayKind(kind.Kind, kind.Of, IsDrop: true))),
        (Drop("drop say", Name), new OverlayKind("say", VocabularyGrammar.Say, IsDrop: true)),
        (Drop("drop expectation", ClaimParsers.Claim), new OverlayKind("expectation", QuestionGrammar.Expect, IsDrop: true)),
        (Refused("drop caution"), new OverlayKind("caution", RuleGrammar.Caution, IsDrop: true)),
    ];

    private static readonly FrozenDictionary<HeadSpec, OverlayKind> KindOfHead = Heads.ToFrozenDictionary(pair => pair.Head, pair => pair.Kind);

    /// <summary>One kind of statement for each kind of thing that can be changed or dropped.</summary>
    public static readonly ImmutableArray<HeadSpec> All = [.. Heads.Select(pair => pair.Head)];

    /// <summary>What such a statement is about; null for statements of other kinds.</summary>
    public static OverlayKind? KindOf(HeadSpec spec) => KindOfHead.GetValueOrDefault(spec);

    private static HeadSpec Change((string Kind, HeadSpec? Of, TokenListParser<TokenKind, NameSyntax?> Name) kind) => new()
    {
        FirstLine = new ClauseSpec<NameSyntax?>($"change {kind.Kind}", kind.Name),
        NamedLine = kind.Kind == "tiers" ? Tier : kind.Of?.NamedLine,
        Lines = [.. Lines(kind.Of).Select(use => use with { Required = false, Spec = Changed(use.Spec) })],
    };

    private static HeadSpec Drop<T>(string head, TokenListParser<TokenKind, T> parser) => new()
    {
        FirstLine = new ClauseSpec<T>(head, parser),
        Lines = [Uniform.Because.MustRepeat(), .. Uniform.Lines.Where(use => use.Spec != Uniform.Because)],
    };

    private static HeadSpec Refused(string head) => new() { FirstLine = Texts.Text(head), Lines = RuleGrammar.Caution.Lines.Select(use => use with { Required = false }).ToImmutableArray() };

    private static ClauseSpec Changed(ClauseSpec spec) => spec == ScoringGrammar.Counts ? Counts : spec == VocabularyGrammar.Tier ? Tier : spec;

    private static ImmutableArray<ClauseUse> Lines(HeadSpec? of) => of?.Lines ??
    [
        Points.May(), NeverAbove.May(), NeverBelow.May(), .. Reach.Lines, RuleGrammar.InFavour.May(), RuleGrammar.Against.May(), RuleGrammar.Each.May(), .. Uniform.Lines,
    ];
}
