using ScoreRules.Statistics.Solving;

namespace ScoreRules.Statistics.Beliefs;

/// <summary>
/// Takes studies into beliefs. Of measured differences the result is the normal posterior, precision S^-1 + X' V^-1 X (Lindley and Smith
/// 1972, Journal of the Royal Statistical Society B 34:1). Of "at least" it is the one mode of the prior times exp(-shortfall^2 / (2 v)),
/// the shortfall being max(0, least - lead): smooth, convex, and silent while the lead is enough. Both are solved over the studies, not
/// the scores, so that many scores cost little.
/// </summary>
public sealed class BeliefUpdate
{
    private readonly DualProblem problem;
    private readonly int[] order;

    private BeliefUpdate(ScorePrior prior, IReadOnlyList<Observation> observations)
    {
        Prior = prior;
        Observations = observations;
        order = [.. Enumerable.Range(0, observations.Count)
            .OrderBy(i => observations[i].Kind).ThenBy(i => observations[i].Terms[0].Score).ThenBy(i => observations[i].Terms[^1].Score)
            .ThenBy(i => observations[i].Value).ThenBy(i => observations[i].Variance)];
        Reach = [.. observations.Select(Reached)];
        problem = new DualProblem([.. order.Select(Row)], observations.Count(observation => observation.Kind == ObservationKind.Measured));
    }

    /// <summary>The beliefs before the studies.</summary>
    public ScorePrior Prior { get; }

    /// <summary>The studies, in the order given.</summary>
    public IReadOnlyList<Observation> Observations { get; }

    /// <summary>For each study the covariance of what it speaks of with each score.</summary>
    internal double[][] Reach { get; }

    /// <summary>Prepares an update.</summary>
    /// <exception cref="StatisticsInputException">A study speaks of a score that is not there.</exception>
    public static BeliefUpdate Of(ScorePrior prior, IReadOnlyList<Observation> observations)
    {
        foreach (var term in observations.SelectMany(observation => observation.Terms))
        {
            Require.Index(term.Score, prior.Count, "A score that a study speaks of");
        }

        return new BeliefUpdate(prior, observations);
    }

    /// <summary>The beliefs after the studies.</summary>
    /// <exception cref="StatisticsInputException">The likenesses contradict one another.</exception>
    public ScoreBeliefs Posterior()
    {
        double[] means = [.. Prior.Means];
        var solution = Solve(means);
        var forces = new double[order.Length];
        for (var k = 0; k < order.Length; k++)
        {
            forces[order[k]] = solution.Multipliers[k];
        }

        Move(means, solution);
        return new ScoreBeliefs(this, means, forces, [.. solution.Active.Select(k => order[k])], solution.Factor);
    }

    /// <summary>Moves a list of prior means to their posterior ones in place; for draws, where the rest is not asked for.</summary>
    /// <param name="means">As many as there are scores.</param>
    /// <exception cref="StatisticsInputException">The likenesses contradict one another.</exception>
    public void Move(Span<double> means) => Move(means, Solve(means));

    private DualSolution Solve(ReadOnlySpan<double> means)
    {
        var start = new double[order.Length];
        for (var k = 0; k < start.Length; k++)
        {
            start[k] = Observations[order[k]].Of(means) - Observations[order[k]].Value;
        }

        return DualActiveSet.Solve(problem, start) ?? throw new StatisticsInputException("The likenesses cannot be those of one set of things: together they contradict one another.");
    }

    private void Move(Span<double> means, DualSolution solution)
    {
        foreach (var k in solution.Active)
        {
            InnerProduct.AddScaled(means, Reach[order[k]], solution.Multipliers[k]);
        }
    }

    private double[] Reached(Observation observation)
    {
        var reach = new double[Prior.Count];
        foreach (var term in observation.Terms)
        {
            for (var i = 0; i < reach.Length; i++)
            {
                reach[i] += term.Factor * Prior.Covariance(i, term.Score);
            }
        }

        return reach;
    }

    private double[] Row(int study)
    {
        double[] row = [.. order.Select(other => Observations[other].Of(Reach[study]))];
        row[Array.IndexOf(order, study)] += Observations[study].Variance;
        return row;
    }
}
