using System.Collections.Immutable;

namespace ScoreRules.Guarding.Exercising;

/// <summary>
/// Which rules the expectations of a house exercise. A rule is exercised by an expectation when it has its effect on a placement on which the
/// outcome of that expectation depends, and is of a kind that can change that outcome. That is less than being guarded: whether a broken rule
/// would be noticed is what <see cref="Breaking.BreakageRun"/> finds out.
/// </summary>
public static class RuleCoverage
{
    /// <summary>All rules, by kind, each kind in the order of the house.</summary>
    /// <param name="judgement">A house judged without errors.</param>
    public static ImmutableArray<ExercisedRule> Of(Judgement judgement)
    {
        var rows = judgement.Inferred!.Facts.Rows;
        var reaches = judgement.Ruleset.Expectations.Select(expectation => (Expectation: expectation, Reach: ExpectationReach.Of(judgement, expectation))).ToList();
        return
        [
            .. RuleEffects.Of(judgement).Select(rule => new ExercisedRule(
                rule.Statement,
                rule.Group,
                [.. rule.Rows.Select(row => rows[row])],
                [.. reaches.Where(one => one.Reach.Groups(rule.Group) && !one.Reach.Rows.And(rule.Rows).IsEmpty).Select(one => one.Expectation)])),
        ];
    }
}
