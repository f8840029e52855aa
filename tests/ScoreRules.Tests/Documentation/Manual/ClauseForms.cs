using System.Collections.Frozen;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Tests.Documentation.Manual;

/// <summary>What stands behind the first words of each kind of line, in EBNF. Where the type of its content says it, nothing is written down.</summary>
internal static class ClauseForms
{
    private static readonly FrozenDictionary<Type, string> ByContent = new Dictionary<Type, string>
    {
        [typeof(ClauseSpec<NoContent>)] = "",
        [typeof(ClauseSpec<NameSyntax>)] = "name",
        [typeof(ClauseSpec<NameSyntax[]>)] = "names",
        [typeof(ClauseSpec<TextSyntax>)] = "text",
        [typeof(ClauseSpec<ConditionLineSyntax>)] = "demands",
        [typeof(ClauseSpec<OperandSyntax>)] = "amount",
        [typeof(ClauseSpec<StepSyntax>)] = "amount",
        [typeof(ClauseSpec<ValueSyntax>)] = "value",
        [typeof(ClauseSpec<FactSyntax[]>)] = "facts",
        [typeof(ClauseSpec<DateSyntax>)] = "date",
        [typeof(ClauseSpec<ClaimSyntax>)] = "claim",
        [typeof(ClauseSpec<TierSyntax>)] = "tier border",
        [typeof(ClauseSpec<ChangedTierSyntax>)] = "tier border | name, \"is\", \"now called\", name",
        [typeof(ClauseSpec<ImportanceSyntax>)] = "importance",
        [typeof(ClauseSpec<WeightSyntax>)] = "weight",
        [typeof(ClauseSpec<ChangedWeightSyntax>)] = "\"half as much\" | \"twice as much\" | number, \"times\", \"as much\" | weight",
        [typeof(ClauseSpec<SaySyntax>)] = "meaning",
        [typeof(ClauseSpec<DirectionSyntax[]>)] = "distance, { \",\", distance }",
        [typeof(ClauseSpec<PairSyntax[]>)] = "quantity, \"at\", quantity, { \",\", quantity, \"at\", quantity }",
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<ClauseSpec, string> Own = new Dictionary<ClauseSpec, string>
    {
        [HouseGrammar.Version] = "version",
        [HouseGrammar.BuildsOn] = "name, [ [ \",\" ], \"version\", version ]",
        [HouseGrammar.Checked] = "date, \"by\", text",
        [HouseGrammar.ExplainsWith] = "number, ( \"reasons in favour\" | \"reason in favour\" ), \",\", number, \"against\"",
        [HouseGrammar.AllowsItsAuthors] = "number, ( \"personal judgements\" | \"personal judgement\" )",
        [HouseGrammar.Person] = "quantity, \",\", quantity, \",\", name",
        [HouseGrammar.Philosophy.FirstLine] = "[ text ]",
        [VocabularyGrammar.Rated] = "number, \"to\", number",
        [VocabularyGrammar.InUnit] = "unit",
        [VocabularyGrammar.Anchor] = "number, text",
        [VocabularyGrammar.MadeOf] = "parts, { \",\", parts }",
        [ScoringGrammar.Reads] = "name, [ \"for\", names ]",
        [ScoringGrammar.Worth] = "worth point, { \",\", worth point }",
        [ScoringGrammar.UnknownIsWorth] = "share",
        [RuleGrammar.LeaveOut.FirstLine] = "[ names ]",
        [RuleGrammar.Severity] = "\"stop\" | \"high\" | \"medium\" | \"low\"",
        [RuleGrammar.Shown] = "\"above the ranking\" | \"beside the name\" | \"on the card\" | \"at the foot\"",
        [EvidenceGrammar.PrinciplesMayBeOff] = "points",
        [EvidenceGrammar.OneStandardDeviationIsWorth] = "\"unknown\" | measure, [ doubt ]",
        [EvidenceGrammar.LoneStudyAdds] = "points, \"of doubt\"",
        [EvidenceGrammar.Spreads] = "share, \"alike\"",
        [EvidenceGrammar.Compares] = "\"movements\" | \"classes of\", name | \"amounts of\", name",
        [EvidenceGrammar.Found] = "name, \"is\", verdict, name, [ \"for\", names ]",
        [EvidenceGrammar.Measured] = "name, \"is\", value, \"better than\", name, [ \"for\", names ]",
        [EvidenceGrammar.People] = "number, text",
        [EvidenceGrammar.Lasted] = "number, ( \"weeks\" | \"week\" )",
        [EvidenceGrammar.Design] = "\"within person\" | \"between groups\" | \"observed\" | \"pooled\", number, \"studies\"",
        [EvidenceGrammar.Trust] = "share, [ \"because\", text ]",
        [EvidenceGrammar.Withdrawn] = "date, [ \"because\", text ]",
        [MovementGrammar.Keeps] = "kept angle, { \",\", kept angle }",
        [MovementGrammar.ButKeeps] = "kept angle, { \",\", kept angle }",
        [MovementGrammar.Moves] = "turn, { \",\", turn }",
        [MovementGrammar.ButMoves] = "turn, { \",\", turn }",
        [QuestionGrammar.Include] = "number, \"when\", demands",
        [QuestionGrammar.Total] = "name, \"is\", \"at most\", value",
        [QuestionGrammar.NoTwoAlike] = "share",
        [QuestionGrammar.Choose.FirstLine] = "number, \"for\", names",
        [QuestionGrammar.AskWhy.FirstLine] = "name, \"is\", \"above\", name",
        [QuestionGrammar.AskWhere.FirstLine] = "name, \"is shaky\"",
        [Uniform.ExceptFor] = "names, [ \"because\", text ]",
        [Uniform.Accept] = "name, \"because\", text",
        [OverlayGrammar.Points] = "points",
        [RuleGrammar.Refuse.FirstLine] = "",
    }.ToFrozenDictionary();

    // A house has one of each, so no name is needed to say which.
    private static readonly FrozenDictionary<string, string> OfOverlays = new Dictionary<string, string>
    {
        ["change ruleset"] = "[ name ]",
        ["drop ruleset"] = "[ name ]",
        ["change tiers"] = "",
        ["drop tiers"] = "",
        ["change evidence"] = "",
        ["drop evidence"] = "",
        ["change weights"] = "",
        ["drop weights"] = "",
    }.ToFrozenDictionary();

    /// <summary>The form of the rest of a line; empty when its first words say it all.</summary>
    /// <exception cref="InvalidOperationException">A kind of line was added without its form.</exception>
    public static string Of(ClauseSpec spec) =>
        Own.GetValueOrDefault(spec) ?? OfOverlays.GetValueOrDefault(spec.Starter) ?? ByContent.GetValueOrDefault(spec.GetType()) ?? throw new InvalidOperationException($"Say in {nameof(ClauseForms)} what stands behind \"{spec.Starter}\".");

    /// <summary>The whole line: its first words and what stands behind them.</summary>
    public static string Line(ClauseSpec spec)
    {
        var rest = Of(spec);
        return rest.Length == 0 ? $"\"{spec.Starter}\""
            : spec.Starter.Length == 0 ? rest
            : rest.Contains(" | ", StringComparison.Ordinal) && !rest.Contains("( ", StringComparison.Ordinal) ? $"\"{spec.Starter}\", ( {rest} )"
            : $"\"{spec.Starter}\", {rest}";
    }
}
