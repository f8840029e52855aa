using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>All kinds of statement: the one table from which the parser, messages, completion and the manual come.</summary>
internal static class StatementTable
{
    /// <summary>The kinds that say something themselves, in the order of the manual.</summary>
    public static readonly ImmutableArray<HeadSpec> Own =
    [
        HouseGrammar.Ruleset, HouseGrammar.Section, HouseGrammar.Philosophy, HouseGrammar.Note,
        VocabularyGrammar.Attribute, VocabularyGrammar.Muscle, VocabularyGrammar.Target, VocabularyGrammar.Tiers, VocabularyGrammar.Say,
        ScoringGrammar.Weights, ScoringGrammar.Criterion,
        RuleGrammar.Call, RuleGrammar.WorkOut, RuleGrammar.Give, RuleGrammar.Take, RuleGrammar.CancelOut, RuleGrammar.NeverAbove,
        RuleGrammar.NeverBelow, RuleGrammar.LeaveOut, RuleGrammar.Caution, RuleGrammar.Refuse,
        EvidenceGrammar.Evidence, EvidenceGrammar.Study,
        MovementGrammar.Movement, MovementGrammar.Place,
        QuestionGrammar.Profile, QuestionGrammar.Choose, QuestionGrammar.Expect,
        .. AskGrammar.All.Select(question => question.Head),
    ];

    /// <summary>All kinds, those of overlays (<c>change</c>, <c>drop</c>) included.</summary>
    public static readonly ImmutableArray<HeadSpec> All = [.. Own, .. OverlayGrammar.All];
}
