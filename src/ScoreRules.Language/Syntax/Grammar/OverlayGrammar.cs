using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>
/// Statements with which a house changes the house it builds on. <c>change</c> takes the lines of the kind it changes,
/// none of them compulsory; a caution can be neither changed nor dropped.
/// </summary>
internal static class OverlayGrammar
{
    public static readonly ClauseSpec<QuantitySyntax> Points = new("points", Values.Points);

    public static readonly ClauseSpec<NameSyntax[]> Rename = new("rename",
        from old in Names.Until("to")
        from to in Primitives.Phrase("to")
        from renamed in Names.Single
        select new NameSyntax[] { old, renamed });

    private static readonly (string Kind, HeadSpec? Of, bool Named)[] Kinds =
    [
        ("attribute", VocabularyGrammar.Attribute, true), ("target", VocabularyGrammar.Target, true), ("tiers", VocabularyGrammar.Tiers, false),
        ("criterion", ScoringGrammar.Criterion, true), ("call", RuleGrammar.Call, true), ("work out", RuleGrammar.WorkOut, true),
        ("rule", null, true), ("study", EvidenceGrammar.Study, true), ("movement", MovementGrammar.Movement, true),
        ("profile", QuestionGrammar.Profile, true), ("evidence", EvidenceGrammar.Evidence, false), ("ruleset", HouseGrammar.Ruleset, false),
        ("weights", ScoringGrammar.Weights, false),
    ];

    /// <summary>One kind of statement for each kind of thing that can be changed or dropped.</summary>
    public static readonly ImmutableArray<HeadSpec> All = [.. Kinds.Select(Change), .. Kinds.Select(Drop)];

    private static HeadSpec Change((string Kind, HeadSpec? Of, bool Named) kind) => new()
    {
        FirstLine = new ClauseSpec<NameSyntax?>($"change {kind.Kind}", kind.Named ? Names.Single.Select(name => (NameSyntax?)name) : Names.Single.Maybe()),
        NamedLine = kind.Of?.NamedLine,
        Lines = [.. Lines(kind.Of).Select(use => use with { Required = false }), .. kind.Kind == "tiers" ? [Rename.Repeat()] : Array.Empty<ClauseUse>()],
    };

    private static HeadSpec Drop((string Kind, HeadSpec? Of, bool Named) kind) => new()
    {
        FirstLine = new ClauseSpec<NameSyntax?>($"drop {kind.Kind}", kind.Named ? Names.Single.Select(name => (NameSyntax?)name) : Names.Single.Maybe()),
        Lines = [Uniform.Because.MustRepeat(), .. Uniform.Lines.Where(use => use.Spec != Uniform.Because)],
    };

    private static ImmutableArray<ClauseUse> Lines(HeadSpec? of) => of?.Lines
        ?? [Points.May(), .. Reach.Lines, RuleGrammar.InFavour.May(), RuleGrammar.Against.May(), RuleGrammar.Each.May(), .. Uniform.Lines];
}
