namespace ScoreRules.Statistics.Draws;

/// <summary>
/// Weights that scatter about stated ones: Dirichlet with shapes kappa w_i, by gamma numbers over their sum (Devroye 1986, Non-Uniform
/// Random Variate Generation, chapter XI). The deviation of a weight is sqrt(w (1 - w) / (kappa + 1)). A stated weight of 0 stays 0.
/// </summary>
public sealed class DirichletWeights : IWeightSource
{
    private readonly double[] shapes;

    private DirichletWeights(double[] shapes) => this.shapes = shapes;

    /// <inheritdoc/>
    public int Count => shapes.Length;

    /// <summary>Takes the stated weights and how firmly they are meant.</summary>
    /// <param name="weights">Each 0 or more, not all 0; they need not sum to 1.</param>
    /// <param name="kappa">Above 0; the larger, the closer the draws.</param>
    /// <exception cref="StatisticsInputException">A figure out of its range, or no weight above 0.</exception>
    public static DirichletWeights About(IReadOnlyList<double> weights, double kappa)
    {
        Require.Positive(kappa, "The firmness of weights");
        var total = weights.Sum(weight => Require.NotNegative(weight, "A weight"));
        Require.Positive(total, "The sum of the weights");
        return new DirichletWeights([.. weights.Select(weight => kappa * weight / total)]);
    }

    /// <summary>The firmness that gives a weight a wanted deviation: kappa = w (1 - w) / sd^2 - 1.</summary>
    /// <param name="weight">The share of the weight, between 0 and 1.</param>
    /// <param name="deviation">The deviation of its share, above 0 and below sqrt(w (1 - w)).</param>
    /// <exception cref="StatisticsInputException">A figure out of its range.</exception>
    public static double KappaFor(double weight, double deviation)
    {
        Require.Share(weight, "A weight");
        var spread = Require.Positive(deviation, "The deviation of a weight");
        return Require.Positive((weight * (1 - weight) / (spread * spread)) - 1, "The firmness of a weight with so large a deviation");
    }

    /// <inheritdoc/>
    public void Next(Generator generator, Span<double> weights)
    {
        for (var i = 0; i < shapes.Length; i++)
        {
            weights[i] = shapes[i] == 0 ? 0 : generator.NextGamma(shapes[i]);
        }

        Shares.Normalise(weights);
    }
}
