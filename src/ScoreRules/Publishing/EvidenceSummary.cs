using ScoreRules.Evidence;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>What studies did in one target, in two sentences.</summary>
internal static class EvidenceSummary
{
    /// <summary>The sentences; null when no study counts there and nothing moved.</summary>
    public static string? Of(Judgement judgement, TargetRanking ranking)
    {
        if (judgement.Evidence?.Targets[ranking.Target.Index] is not { } target || (target.Claims.IsEmpty && target.Movements.All(movement => movement.Moved == 0)))
        {
            return null;
        }

        var studies = target.Claims.Select(claim => claim.Study).DistinctBy(study => study.Name).ToList();
        var counted = studies.Count == 0 ? "" : $"{Sentences.Sentence(EvidenceText.Studies(studies) + (studies.Count == 1 ? " counts" : " count") + " here; * marks what was tested")} ";
        return (counted + Moved(judgement, target, ranking)).TrimEnd();
    }

    private static string Moved(Judgement judgement, TargetEvidence target, TargetRanking ranking)
    {
        var moved = target.MoveOf(ranking.Benchmark);
        if (Rounding.Printed(moved, 1) == 0)
        {
            return "";
        }

        var alone = judgement.Explainer!.OnPrinciple.First(other => other.Target.Index == ranking.Target.Index);
        var elsewhere = ranking.Placements.Count(placement => !target.Of(placement.Row)!.IsTested && alone.Of(placement.Row.Movement) is { } before && before.TierBeforeLimits.Index != placement.TierBeforeLimits.Index);
        var others = elsewhere == 0 ? "no untested movement changes its tier by it" : elsewhere == 1 ? "one untested movement stands in another tier" : $"{NumberText.Count(elsewhere)} untested movements stand in another tier";
        return $"The benchmark itself moved {NumberText.Signed(moved)}: every gap is {NumberText.Points(Math.Abs(moved))} {(moved > 0 ? "smaller" : "larger")} than on principle alone, and {others}.";
    }
}
