using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Scoring;

namespace ScoreRules.Guarding.Exercising;

/// <summary>Where each rule of a house has its effect.</summary>
internal static class RuleEffects
{
    /// <summary>All rules that can move a placement, by kind, each kind in the order of the house.</summary>
    public static IEnumerable<(BoundStatement Statement, RuleGroup Group, RowSet Rows)> Of(Judgement judgement)
    {
        var (ruleset, inferred) = (judgement.Ruleset, judgement.Inferred!);
        return
        [
            .. Scorer.Score(ruleset, inferred).Criteria.Select(column => ((BoundStatement)column.Criterion, RuleGroup.Criterion, Counting(column, inferred.Facts))),
            .. Acting(ruleset.Calls, RuleGroup.CalledFact),
            .. ruleset.Recipes.Select(recipe => ((BoundStatement)recipe, RuleGroup.Recipe, inferred.Facts.Known(recipe.Result))),
            .. Acting(ruleset.Awards, RuleGroup.Award),
            .. Acting(ruleset.Limits, RuleGroup.Limit),
            .. Acting(ruleset.Exclusions, RuleGroup.Exclusion),
            .. ruleset.Places.Select(place => ((BoundStatement)place, RuleGroup.Judgement, Judged(judgement, place))),
            .. ruleset.Studies.Where(study => study.Strength != StudyStrength.Show && !study.IsWithdrawn(ruleset.Date)).Select(study => ((BoundStatement)study, RuleGroup.Study, Pulled(judgement, study))),
        ];

        IEnumerable<(BoundStatement Statement, RuleGroup Group, RowSet Rows)> Acting(IEnumerable<BoundStatement> statements, RuleGroup group) =>
            statements.Select(statement => (statement, group, inferred.Outcome(statement).Effective));
    }

    private static RowSet Counting(CriterionColumn column, FactTable facts) =>
        RowSet.Of(facts.RowCount, facts.Rows.Where(row => column.Weights[row.Target.Index] > 0 && !double.IsNaN(column.Worth[row.Index])).Select(row => row.Index));

    private static RowSet Judged(Judgement judgement, PlaceDefinition place)
    {
        var shifted = judgement.Rankings.SelectMany(ranking => ranking.Placements).Where(placement => ReferenceEquals(placement.Judgement, place)).Select(placement => placement.Row);
        return Rows(judgement, shifted.Concat(judgement.Inferred!.Facts.Rows.Where(row => ReferenceEquals(judgement.Evidence!.Of(row).Place, place))));
    }

    private static RowSet Pulled(Judgement judgement, StudyDefinition study) => Rows(
        judgement,
        judgement.Inferred!.Facts.Rows.Where(row => judgement.Evidence!.Of(row) is var evidence && evidence.Pulls.Concat(evidence.Held).Any(pull => pull.Points != 0 && pull.Claim.Study.Name == study.Name)));

    private static RowSet Rows(Judgement judgement, IEnumerable<PlacementRow> rows) => RowSet.Of(judgement.Inferred!.Facts.RowCount, rows.Select(row => row.Index));
}
