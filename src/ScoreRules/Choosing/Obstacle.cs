using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>Why no choice is possible.</summary>
/// <param name="Alone">Limits of which any one, taken away alone, makes a choice possible; in the order of the request.</param>
/// <param name="Together">Limits that cannot be kept together, none of them idle; the same as none when one alone is in the way.</param>
public sealed record Obstacle(ImmutableArray<LimitInTheWay> Alone, ImmutableArray<ChoiceLimit> Together)
{
    /// <summary>Finds out by taking away one limit at a time, and where that is not enough, all that can be spared.</summary>
    internal static Obstacle Of(ChoiceProblem problem)
    {
        var alone = problem.Limits.Where(limit => ExactChoice.IsPossible(problem.Without(limit))).Select(limit => new LimitInTheWay(limit, Least(problem, limit))).ToImmutableArray();
        if (!alone.IsEmpty)
        {
            return new Obstacle(alone, []);
        }

        var core = problem;
        foreach (var limit in problem.Limits)
        {
            core = ExactChoice.IsPossible(core.Without(limit)) ? core : core.Without(limit);
        }

        return new Obstacle([], core.Limits);
    }

    private static double? Least(ChoiceProblem problem, ChoiceLimit limit) => limit switch
    {
        AtMostLimit sum => (double?)ExactChoice.Least(problem, sum) / AtMostLimit.Scale,
        CountLimit => ExactChoice.Fewest(problem.Without(limit)),
        _ => null,
    };
}
