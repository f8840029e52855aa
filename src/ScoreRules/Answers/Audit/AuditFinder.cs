using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Audit;

/// <summary>Finds placements that other placements contradict.</summary>
internal static class AuditFinder
{
    /// <summary>The answer.</summary>
    public static AuditAnswer Find(AskedHouse asked)
    {
        var likeness = new Likeness(asked.Ruleset.Attributes);
        return new AuditAnswer(asked.Question, [.. asked.Rankings.Select(ranking => Find(asked, ranking, likeness))], [.. asked.Judgement.Expectations.Where(result => !result.Holds)]);
    }

    private static AuditFinding Find(AskedHouse asked, TargetRanking ranking, Likeness likeness)
    {
        var list = ranking.Placements.Select(placement => asked.Explain(ranking, placement.Row.Movement)!).ToImmutableArray();
        return new AuditFinding(ranking.Target, Dominance.In(list), Residuals.In(ranking.Placements, likeness))
        {
            Tested = asked.Judgement.Evidence is { } evidence ? [.. TestedOrder.In(evidence.Targets[ranking.Target.Index], ranking)] : [],
        };
    }
}
