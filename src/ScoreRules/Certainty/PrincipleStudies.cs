using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Certainty;

/// <summary>
/// What studies of a principle do to how far a criterion is believed. A study that found more of it better by d, give or take s, gives odds of
/// F(z) to 1 - F(z) that more is better, z = d / s, F the normal distribution; these multiply the odds that the author stated (Bayes). A
/// belief that the author did not state stays sure; "about the same" says nothing either way.
/// </summary>
public static class PrincipleStudies
{
    // Nobody is ever wholly sure by a study.
    private const double Most = 0.99;

    /// <summary>The chance that a criterion is right after the studies of its principle that are weighed.</summary>
    /// <param name="chance">The chance that its author stated, 0 to 1.</param>
    /// <param name="statement">A statement; only criteria change.</param>
    /// <param name="ruleset">The house.</param>
    public static double Update(double chance, BoundStatement statement, BoundRuleset ruleset)
    {
        if (statement is not CriterionDefinition criterion || chance is <= 0 or >= 1 || ruleset.Evidence?.LoneStudyAdds is not { } lone)
        {
            return chance;
        }

        var odds = chance / (1 - chance);
        foreach (var study in ruleset.Studies.Where(study => Counts(study, criterion, ruleset)))
        {
            odds *= study.Findings.Aggregate(1.0, (product, finding) => product * Odds(finding, study.Trust, lone));
        }

        var after = odds / (1 + odds);
        return after > chance ? Math.Max(chance, Math.Min(Most, after)) : after;
    }

    /// <summary>Whether a study bears on how far a criterion is believed.</summary>
    public static bool Counts(StudyDefinition study, CriterionDefinition criterion, BoundRuleset ruleset) =>
        study is { Level: StudyLevel.Amounts, Criterion: { } name, Trust: > 0 } && NameText.Same(name, criterion.Name) && study.Strength != StudyStrength.Show && !study.IsWithdrawn(ruleset.Date)
        && (ruleset.House?.Judges is not { } judged || NameText.Same(judged, study.Outcome));

    private static double Odds(StudyFinding finding, double trust, double lone)
    {
        if (finding.Amount is not { } amount || finding.Unit != "points" || finding.Verdict is not (StudyVerdict.BetterThan or StudyVerdict.MeasuredBetter))
        {
            return 1;
        }

        var z = amount.Number / Math.Sqrt(((amount.Spread * amount.Spread) + (lone * lone)) / trust) * (finding.First == "more" ? 1 : -1);
        var right = Math.Clamp(NormalDistribution.Below(z), 1 - Most, Most);
        return right / (1 - right);
    }
}
