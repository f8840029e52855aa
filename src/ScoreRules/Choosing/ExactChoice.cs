using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace ScoreRules.Choosing;

/// <summary>
/// Solves choices exactly, by constraint programming (CP-SAT). One worker, a fixed seed and no limit of time, so that the answer depends
/// on nothing but the problem; and the answer is the only one there is, because ties are solved too.
/// </summary>
internal static class ExactChoice
{
    private const string Settings = "num_workers:1,random_seed:1,linearization_level:2,log_search_progress:false";

    /// <summary>The best choice, positions rising; null when none keeps every limit.</summary>
    public static ImmutableArray<int>? Best(ChoiceProblem problem)
    {
        var model = new ChoiceModel(problem);
        // The smaller of two choices of one value: a movement that adds nothing is not taken.
        var goal = (model.Value * (problem.Worth.Length + 1)) - model.Count;
        model.Model.Maximize(goal);
        if (Solve(model) is not { } solver)
        {
            return null;
        }

        var best = (long)Math.Round(solver.ObjectiveValue, MidpointRounding.AwayFromZero);
        var taken = model.Chosen(solver).Length;
        model.Model.Add(goal >= best);
        return Earliest(model, taken);
    }

    /// <summary>The fewest that keep every limit; null when none do.</summary>
    public static int? Fewest(ChoiceProblem problem)
    {
        var model = new ChoiceModel(problem with { Weights = [] });
        model.Model.Minimize(model.Count);
        return Solve(model) is { } solver ? model.Chosen(solver).Length : null;
    }

    /// <summary>The least that a sum can be while every other limit is kept, in its thousandths; null when even that cannot be.</summary>
    public static long? Least(ChoiceProblem problem, AtMostLimit sum)
    {
        var model = new ChoiceModel(problem.Without(sum) with { Weights = [] });
        model.Model.Minimize(LinearExpr.WeightedSum(model.Taken, sum.Amounts));
        return Solve(model) is { } solver ? model.Chosen(solver).Sum(candidate => sum.Amounts[candidate]) : null;
    }

    /// <summary>Whether any choice keeps every limit.</summary>
    public static bool IsPossible(ChoiceProblem problem) => Solve(new ChoiceModel(problem with { Weights = [] })) is not null;

    // One candidate after the other: the first that any of the best choices can hold, then the first that goes with it.
    private static ImmutableArray<int> Earliest(ChoiceModel model, int count)
    {
        var found = new List<int>();
        while (found.Count < count)
        {
            var from = found.Count == 0 ? 0 : found[^1] + 1;
            var next = model.NextFrom(from);
            model.Model.Minimize(LinearExpr.WeightedSum(next, Enumerable.Range(from, next.Length)));
            var solver = Solve(model) ?? throw new InvalidOperationException("A choice that was found cannot be found again.");
            var first = model.Chosen(solver).First(candidate => candidate >= from);
            model.Fix(from, first);
            found.Add(first);
        }

        return [.. found];
    }

    private static CpSolver? Solve(ChoiceModel model)
    {
        var solver = new CpSolver { StringParameters = Settings };
        return solver.Solve(model.Model) switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => solver,
            CpSolverStatus.Infeasible => null,
            var status => throw new InvalidOperationException($"The solver ended with {status}."),
        };
    }
}
