using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Finds what a change or a drop is about, and names what statements declare.</summary>
internal static class Things
{
    private static readonly HashSet<HeadSpec> Rules =
    [
        RuleGrammar.Give, RuleGrammar.Take, RuleGrammar.CancelOut, RuleGrammar.NeverAbove, RuleGrammar.NeverBelow, RuleGrammar.LeaveOut, RuleGrammar.Refuse,
        RuleGrammar.Caution, MovementGrammar.Place, QuestionGrammar.Choose, QuestionGrammar.Expect,
    ];

    private static readonly HashSet<HeadSpec> Single = [VocabularyGrammar.Tiers, EvidenceGrammar.Evidence, HouseGrammar.Ruleset, ScoringGrammar.Weights];

    /// <summary>The name that a statement declares, or null.</summary>
    public static NameSyntax? NameOf(StatementSyntax statement) => statement.First switch
    {
        ClauseSyntax<NameSyntax> { Content: { } name } when statement.Spec.DeclaresName || statement.Spec == EvidenceGrammar.Study || statement.Spec == HouseGrammar.Ruleset => name,
        ClauseSyntax<SaySyntax> { Content: { } say } => say.Word,
        _ => null,
    };

    /// <summary>The name written behind <c>change</c> or <c>drop</c>, or null.</summary>
    public static NameSyntax? NameIn(StatementSyntax amending) => amending.First switch
    {
        ClauseSyntax<NameSyntax?> name => name.Content,
        ClauseSyntax<SaySyntax> say => say.Content.Word,
        _ => null,
    };

    /// <summary>What a change or drop calls its thing, such as <c>criterion "stretch"</c>.</summary>
    public static string Title(OverlayKind kind, StatementSyntax amending) => NameIn(amending) is { } name ? $"{kind.Words} \"{name.Text}\""
        : amending.First is ClauseSyntax<ClaimSyntax> claim ? $"expectation \"{amending.Source.Slice(SourceSpan.FromBounds(claim.Content.Subject!.Span.Start, claim.Span.End))}\""
        : kind.Words;

    /// <summary>Whether a statement declares something alone, without a name.</summary>
    public static bool IsSingle(HeadSpec spec) => Single.Contains(spec);

    /// <summary>The statements that a change or drop is about.</summary>
    public static List<StatementSyntax> Find(OverlayKind kind, StatementSyntax amending, IEnumerable<StatementSyntax> among) =>
        [.. among.Where(statement => statement.First is not null && IsMeant(kind, amending, statement))];

    /// <summary>Names of the things of a kind, for suggestions.</summary>
    public static IEnumerable<string> Names(OverlayKind kind, IEnumerable<StatementSyntax> among) => kind.Of is null
        ? among.Where(statement => Rules.Contains(statement.Spec) && statement.Spec != RuleGrammar.Caution).Select(statement => statement.Find(Uniform.Named)?.Content.Text).OfType<string>()
        : among.Where(statement => statement.Spec == kind.Of && statement.First is not null).Select(statement => NameOf(statement)?.Text).OfType<string>();

    private static bool IsMeant(OverlayKind kind, StatementSyntax amending, StatementSyntax statement)
    {
        if (kind.Of is null)
        {
            return Rules.Contains(statement.Spec) && statement.Find(Uniform.Named)?.Content.Key == NameIn(amending)!.Key;
        }

        if (statement.Spec != kind.Of)
        {
            return false;
        }

        if (amending.First is ClauseSyntax<ClaimSyntax> claim)
        {
            return Same(claim.Content, statement.Head<ClaimSyntax>());
        }

        return NameIn(amending) is not { } name ? Single.Contains(kind.Of)
            : NameOf(statement)?.Key == name.Key || statement.All(VocabularyGrammar.AlsoKnownAs).Any(line => statement.Spec == MovementGrammar.Movement && line.Content.Any(synonym => synonym.Key == name.Key));
    }

    private static bool Same(ClaimSyntax left, ClaimSyntax right) =>
        left.Kind == right.Kind && left.Subject?.Key == right.Subject?.Key && left.Amount?.Number == right.Amount?.Number && left.Amount?.Unit == right.Amount?.Unit
        && left.Objects.Select(name => name.Key).SequenceEqual(right.Objects.Select(name => name.Key), StringComparer.Ordinal)
        && left.Targets.Select(name => name.Key).SequenceEqual(right.Targets.Select(name => name.Key), StringComparer.Ordinal);
}
