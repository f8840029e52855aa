using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>
/// The choice that takes the one that adds most, again and again, as people do. Without other limits it reaches at least 1 - 1/e = 63 % of the
/// best (Nemhauser, Wolsey and Fisher 1978, Mathematical Programming 14:265).
/// </summary>
internal static class OneByOne
{
    /// <summary>The positions taken, in the order taken. Sums and pairs are kept; what "at least" asks for is not looked ahead for.</summary>
    public static ImmutableArray<int> Take(ChoiceProblem problem)
    {
        var upper = problem.Limits.Where(limit => limit is not AtLeastLimit).ToList();
        var taken = ImmutableArray<int>.Empty;
        while (true)
        {
            var (best, value) = (-1, problem.Value(taken));
            for (var candidate = 0; candidate < problem.Worth.Length; candidate++)
            {
                var with = taken.Add(candidate);
                if (!taken.Contains(candidate) && upper.TrueForAll(limit => limit.Allows(with)) && problem.Value(with) > value)
                {
                    (best, value) = (candidate, problem.Value(with));
                }
            }

            if (best < 0)
            {
                return taken;
            }

            taken = taken.Add(best);
        }
    }
}
