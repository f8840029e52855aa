using ScoreRules.Explanation;
using ScoreRules.Guarding;

namespace ScoreRules.Publishing;

/// <summary>The two placements to lay side by side for an expectation.</summary>
internal static class ExpectationComparison
{
    /// <summary>The movement it is about and the other one, or else the benchmark; null where there are not two to compare.</summary>
    public static PlacementComparison? Of(Judgement judgement, ExpectationResult result)
    {
        if (result.Ranking is not { } ranking || result.Expectation.Movement is not { } name || judgement.Catalogue.Find(name) is not { } movement)
        {
            return null;
        }

        var other = result.Expectation.Other is { } named ? judgement.Catalogue.Find(named) : ranking.Benchmark?.Movement;
        if (other is null || other.Index == movement.Index)
        {
            return null;
        }

        var explainer = judgement.Explainer!;
        return (explainer.Explain(ranking, movement), explainer.Explain(ranking, other)) is ({ } first, { } second) ? new PlacementComparison(first, second) : null;
    }
}
