namespace ScoreRules.Statistics.Solving;

/// <summary>
/// A convex quadratic programme in its dual form: find multipliers l with slack w = M l + q, where for a free row w = 0, and for every
/// other l >= 0, w >= 0 and l w = 0. Free rows stand first.
/// </summary>
/// <param name="Rows">M, symmetric and positive semidefinite, row by row.</param>
/// <param name="Free">How many rows, from the first, are equalities.</param>
internal sealed record DualProblem(double[][] Rows, int Free)
{
    /// <summary>What is left of a diagonal below this share of it is taken for nothing: the row depends on others.</summary>
    public const double Dependent = 1e-11;

    // Variances hold the free rows apart, however small; only rounding and likenesses that contradict one another bring a pivot to this.
    private const double Rounding = 1e-14;

    private GrowingFactor? free;

    /// <summary>The factor of the free rows, made once; null when they depend on one another.</summary>
    public GrowingFactor FreeFactor => free ??= MakeFreeFactor();

    private GrowingFactor MakeFreeFactor()
    {
        var factor = new GrowingFactor();
        for (var i = 0; i < Free; i++)
        {
            var forward = factor.Forward(Rows[i]);
            var pivot = Rows[i][i] - InnerProduct.Of(forward, forward);
            if (!(pivot > Rounding * Rows[i][i]))
            {
                throw new StatisticsInputException("The likenesses cannot be those of one set of things: together they contradict one another.");
            }

            factor.Append(forward, pivot);
        }

        return factor;
    }
}
