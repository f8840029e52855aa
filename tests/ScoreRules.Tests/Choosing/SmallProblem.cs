using System.Collections.Immutable;
using ScoreRules.Choosing;

namespace ScoreRules.Tests.Choosing;

/// <summary>Choices small enough to try every subset of.</summary>
internal static class SmallProblem
{
    /// <summary>The best subset, by trying all: highest value, then fewest, then the earliest positions. Null when none keeps the limits.</summary>
    public static int[]? Best(ChoiceProblem problem)
    {
        int[]? best = null;
        for (var mask = 1; mask < 1 << problem.Worth.Length; mask++)
        {
            int[] taken = [.. Enumerable.Range(0, problem.Worth.Length).Where(candidate => (mask >> candidate & 1) == 1)];
            if (Keeps(problem, taken) && (best is null || IsBetter(problem, taken, best)))
            {
                best = taken;
            }
        }

        return best;
    }

    /// <summary>The value of a subset, added up from the definition.</summary>
    public static long Value(ChoiceProblem problem, int[] taken) => problem.Weights.Select((weight, part) => weight * taken.Max(candidate => problem.Worth[candidate][part])).Sum();

    /// <summary>A problem out of a seed: 7 candidates, 4 parts, every kind of limit; many of its choices tie.</summary>
    public static ChoiceProblem Of(int seed)
    {
        var random = new Random(seed);
        const int candidates = 7;
        return new ChoiceProblem(
            [.. Enumerable.Range(0, 4).Select(_ => (long)random.Next(0, 4))],
            [.. Enumerable.Range(0, candidates).Select(_ => Enumerable.Range(0, 4).Select(_ => (long)random.Next(0, 3)).ToImmutableArray())],
            [
                new CountLimit(random.Next(1, 5)),
                new AtLeastLimit(ChoiceLimitKind.Cover, "a", [.. Enumerable.Range(0, candidates).Where(_ => random.Next(3) == 0)], random.Next(0, 3)),
                new AtMostLimit(ChoiceLimitKind.Total, "b", [.. Enumerable.Range(0, candidates).Select(_ => (long)random.Next(0, 5))], random.Next(0, 9)),
                new NotTogetherLimit(ChoiceLimitKind.Alike, "", [.. Enumerable.Range(0, 4).Select(_ => (random.Next(0, 3), random.Next(3, candidates)))]),
            ]);
    }

    // Written anew, so that it does not lean on the limits' own answers.
    private static bool Keeps(ChoiceProblem problem, int[] taken) => problem.Limits.All(limit => limit switch
    {
        CountLimit count => taken.Length <= count.Most,
        AtLeastLimit least => taken.Intersect(least.Among).Count() >= least.Least,
        AtMostLimit most => taken.Sum(candidate => most.Amounts[candidate]) <= most.Most,
        NotTogetherLimit apart => apart.Pairs.All(pair => !(taken.Contains(pair.First) && taken.Contains(pair.Second))),
        _ => throw new InvalidOperationException(),
    });

    private static bool IsBetter(ChoiceProblem problem, int[] taken, int[] than)
    {
        var (value, before) = (Value(problem, taken), Value(problem, than));
        return value != before ? value > before
            : taken.Length != than.Length ? taken.Length < than.Length
            : taken.Zip(than).Where(pair => pair.First != pair.Second).Select(pair => pair.First < pair.Second).FirstOrDefault();
    }
}
