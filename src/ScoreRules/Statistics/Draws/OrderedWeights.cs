namespace ScoreRules.Statistics.Draws;

/// <summary>
/// Weights of which only an order is known: uniform over all weights that agree with it. Exponential numbers over their sum are uniform
/// over all weights (Devroye 1986, Non-Uniform Random Variate Generation, chapter V); sorted into the order they are uniform over that part.
/// </summary>
public sealed class OrderedWeights : IWeightSource
{
    private readonly int[][] groups;
    private readonly double[] sorted;

    private OrderedWeights(int[][] groups)
    {
        this.groups = groups;
        sorted = new double[groups.Sum(group => group.Length)];
    }

    /// <inheritdoc/>
    public int Count => sorted.Length;

    /// <summary>Nothing is known of the weights.</summary>
    /// <param name="count">How many, 1 or more.</param>
    /// <exception cref="StatisticsInputException">No weight.</exception>
    public static OrderedWeights Unknown(int count) => new([[.. Enumerable.Range(0, Require.AtLeast(count, 1, "The number of weights"))]]);

    /// <summary>An order is known, of some or of all.</summary>
    /// <param name="groups">Places of weights, the most important group first. Each weight of a group is at least that of every later group; within a group nothing is known.</param>
    /// <exception cref="StatisticsInputException">The places are not 0, 1, 2 and so on, each once.</exception>
    public static OrderedWeights Of(IReadOnlyList<IReadOnlyList<int>> groups)
    {
        int[] all = [.. groups.SelectMany(group => group).Order()];
        return all.Length > 0 && all.SequenceEqual(Enumerable.Range(0, all.Length))
            ? new OrderedWeights([.. groups.Select(group => group.ToArray())])
            : throw new StatisticsInputException("An order of weights must name each of them once.");
    }

    /// <inheritdoc/>
    public void Next(Generator generator, Span<double> weights)
    {
        for (var i = 0; i < sorted.Length; i++)
        {
            sorted[i] = generator.NextExponential();
        }

        if (groups.Length > 1)
        {
            Array.Sort(sorted);
            Array.Reverse(sorted);
        }

        var next = 0;
        foreach (var group in groups)
        {
            Deal(generator, group, sorted.AsSpan(next, group.Length), weights);
            next += group.Length;
        }

        Shares.Normalise(weights);
    }

    // Within a group every order is as likely (Fisher and Yates 1938, in Durstenfeld's form).
    private void Deal(Generator generator, int[] group, Span<double> share, Span<double> weights)
    {
        for (var i = group.Length - 1; i > 0 && groups.Length > 1; i--)
        {
            var other = (int)(generator.NextUniform() * (i + 1));
            (share[i], share[other]) = (share[other], share[i]);
        }

        for (var i = 0; i < group.Length; i++)
        {
            weights[group[i]] = share[i];
        }
    }
}
