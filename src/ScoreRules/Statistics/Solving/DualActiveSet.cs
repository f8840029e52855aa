namespace ScoreRules.Statistics.Solving;

/// <summary>
/// The dual active set method (Goldfarb and Idnani 1983, Mathematical Programming 27:1), over multipliers alone: start where only the
/// free rows hold; take the row that is broken most, raise its multiplier until it holds, and let go of any row whose multiplier falls
/// to 0 on the way. Ends after finitely many steps at the only solution, or finds that there is none. Ties go to the lower row.
/// </summary>
internal sealed class DualActiveSet
{
    private readonly DualProblem problem;
    private readonly double[] start;
    private readonly double[] slack;
    private readonly double[] multipliers;
    private readonly double tolerance;
    private readonly List<int> active;
    private readonly bool[] isActive;
    private readonly GrowingFactor factor;

    private DualActiveSet(DualProblem problem, double[] start)
    {
        this.problem = problem;
        this.start = start;
        slack = [.. start];
        multipliers = new double[start.Length];
        tolerance = 1e-12 * Math.Max(1, start.Length == 0 ? 0 : start.Max(Math.Abs));
        active = [.. Enumerable.Range(0, problem.Free)];
        isActive = new bool[start.Length];
        factor = problem.FreeFactor.Copy();
    }

    /// <summary>Solves for one q.</summary>
    /// <returns>The solution; null when the rows contradict one another.</returns>
    public static DualSolution? Solve(DualProblem problem, double[] start)
    {
        var state = new DualActiveSet(problem, start);
        state.Refine();
        for (var broken = state.MostBroken(); broken >= 0; broken = state.MostBroken())
        {
            if (!state.Satisfy(broken))
            {
                return null;
            }

            state.Refine();
        }

        return new DualSolution(state.multipliers, state.active, state.factor);
    }

    private int MostBroken()
    {
        var worst = -1;
        for (var i = problem.Free; i < slack.Length; i++)
        {
            if (!isActive[i] && slack[i] < -tolerance && (worst < 0 || slack[i] < slack[worst]))
            {
                worst = i;
            }
        }

        return worst;
    }

    private bool Satisfy(int row)
    {
        while (true)
        {
            var own = problem.Rows[row];
            var forward = factor.Forward([.. active.Select(other => own[other])]);
            var curvature = own[row] - InnerProduct.Of(forward, forward);
            var direction = (double[])forward.Clone();
            factor.Backward(direction);
            var dependent = !(curvature > DualProblem.Dependent * own[row]);
            var (blocking, limit) = FirstToLeave(direction);
            var whole = dependent ? double.PositiveInfinity : -slack[row] / curvature;
            if (double.IsInfinity(whole) && blocking < 0)
            {
                return false;
            }

            Step(row, direction, Math.Min(whole, limit), dependent ? 0 : curvature);
            if (whole <= limit)
            {
                factor.Append(forward, curvature);
                active.Add(row);
                isActive[row] = true;
                return true;
            }

            multipliers[active[blocking]] = 0;
            isActive[active[blocking]] = false;
            active.RemoveAt(blocking);
            factor.RemoveAt(blocking);
        }
    }

    private (int Blocking, double Limit) FirstToLeave(double[] direction)
    {
        var (blocking, limit) = (-1, double.PositiveInfinity);
        for (var k = problem.Free; k < direction.Length; k++)
        {
            if (direction[k] > 1e-12 && multipliers[active[k]] / direction[k] < limit)
            {
                (blocking, limit) = (k, multipliers[active[k]] / direction[k]);
            }
        }

        return (blocking, limit);
    }

    private void Step(int row, double[] direction, double length, double curvature)
    {
        multipliers[row] += length;
        slack[row] += length * curvature;
        for (var k = 0; k < direction.Length; k++)
        {
            multipliers[active[k]] -= length * direction[k];
        }
    }

    // The multipliers of the active rows anew from the problem itself, so that no error adds up over the steps; then all slacks.
    private void Refine()
    {
        var solved = factor.Solve([.. active.Select(row => -start[row])]);
        for (var k = 0; k < solved.Length; k++)
        {
            multipliers[active[k]] = active[k] < problem.Free ? solved[k] : Math.Max(0, solved[k]);
        }

        for (var i = 0; i < slack.Length; i++)
        {
            slack[i] = start[i];
            foreach (var row in active)
            {
                slack[i] += problem.Rows[i][row] * multipliers[row];
            }
        }
    }
}
