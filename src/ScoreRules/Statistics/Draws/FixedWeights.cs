namespace ScoreRules.Statistics.Draws;

/// <summary>Weights that are the same in every draw; for draws in which something else varies.</summary>
public sealed class FixedWeights : IWeightSource
{
    private readonly double[] shares;

    private FixedWeights(double[] shares) => this.shares = shares;

    /// <inheritdoc/>
    public int Count => shares.Length;

    /// <summary>Takes the stated weights.</summary>
    /// <param name="weights">Each 0 or more, not all 0; they need not sum to 1.</param>
    /// <exception cref="StatisticsInputException">A figure out of its range, or no weight above 0.</exception>
    public static FixedWeights Of(IReadOnlyList<double> weights)
    {
        var total = Require.Positive(weights.Sum(weight => Require.NotNegative(weight, "A weight")), "The sum of the weights");
        return new FixedWeights([.. weights.Select(weight => weight / total)]);
    }

    /// <inheritdoc/>
    public void Next(Generator generator, Span<double> weights) => shares.CopyTo(weights);
}
