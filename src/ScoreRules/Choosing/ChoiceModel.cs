using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace ScoreRules.Choosing;

/// <summary>A choice as the solver sees it.</summary>
internal sealed class ChoiceModel
{
    private readonly ChoiceProblem problem;

    /// <summary>Writes the problem down.</summary>
    public ChoiceModel(ChoiceProblem problem)
    {
        this.problem = problem;
        Taken = [.. problem.Worth.Select((_, candidate) => Model.NewBoolVar($"take{candidate}"))];
        Count = LinearExpr.Sum(Taken);
        Model.Add(Count >= 1);
        foreach (var limit in problem.Limits)
        {
            Add(limit);
        }

        Value = Served();
    }

    /// <summary>The model.</summary>
    public CpModel Model { get; } = new();

    /// <summary>Whether each candidate is taken.</summary>
    public BoolVar[] Taken { get; }

    /// <summary>How many are taken.</summary>
    public LinearExpr Count { get; }

    /// <summary>The value of the choice.</summary>
    public LinearExpr Value { get; }

    /// <summary>What a solution takes, positions rising.</summary>
    public ImmutableArray<int> Chosen(CpSolver solver) => [.. Enumerable.Range(0, Taken.Length).Where(candidate => solver.BooleanValue(Taken[candidate]))];

    /// <summary>Which candidate from a position on is pointed at; it must be taken.</summary>
    public BoolVar[] NextFrom(int from)
    {
        BoolVar[] next = [.. Taken.Skip(from).Select((_, offset) => Model.NewBoolVar($"next{from}-{from + offset}"))];
        Model.AddExactlyOne(next);
        for (var i = 0; i < next.Length; i++)
        {
            Model.AddImplication(next[i], Taken[from + i]);
        }

        return next;
    }

    /// <summary>From a position on, takes none before the one given, and takes that one.</summary>
    public void Fix(int from, int first)
    {
        for (var candidate = from; candidate <= first; candidate++)
        {
            Model.Add(Taken[candidate] == (candidate == first ? 1 : 0));
        }
    }

    private void Add(ChoiceLimit limit)
    {
        switch (limit)
        {
            case CountLimit count:
                Model.Add(Count <= count.Most);
                break;
            case AtLeastLimit least:
                Model.Add(LinearExpr.Sum(least.Among.Select(candidate => Taken[candidate])) >= least.Least);
                break;
            case AtMostLimit most:
                Model.Add(LinearExpr.WeightedSum(Taken, most.Amounts) <= most.Most);
                break;
            case NotTogetherLimit apart:
                foreach (var (first, second) in apart.Pairs)
                {
                    Model.AddBoolOr([Taken[first].Not(), Taken[second].Not()]);
                }

                break;
            default:
                throw new InvalidOperationException($"A limit of the kind {limit.GetType().Name} is not known.");
        }
    }

    // Each part is served by one of the candidates taken, or by none.
    private LinearExpr Served()
    {
        var (serves, worth) = (new List<BoolVar>(), new List<long>());
        foreach (var (part, weight) in Alike())
        {
            var able = Enumerable.Range(0, Taken.Length).Where(candidate => problem.Worth[candidate][part] > 0).ToList();
            BoolVar[] by = [.. able.Select(candidate => Model.NewBoolVar($"part{part}by{candidate}"))];
            for (var i = 0; i < by.Length; i++)
            {
                Model.AddImplication(by[i], Taken[able[i]]);
                worth.Add(weight * problem.Worth[able[i]][part]);
            }

            Model.AddAtMostOne(by);
            serves.AddRange(by);
        }

        return LinearExpr.WeightedSum(serves, worth);
    }

    // Parts that every candidate serves alike are one to the solver: muscles of one target often are.
    private IEnumerable<(int Part, long Weight)> Alike() =>
        Enumerable.Range(0, problem.Weights.Length).Where(part => problem.Weights[part] > 0)
            .GroupBy(part => string.Join(' ', problem.Worth.Select(worth => worth[part])), StringComparer.Ordinal)
            .Select(group => (group.First(), group.Sum(part => problem.Weights[part])));
}
