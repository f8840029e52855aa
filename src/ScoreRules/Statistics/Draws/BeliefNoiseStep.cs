using ScoreRules.Statistics.Solving;

namespace ScoreRules.Statistics.Draws;

/// <summary>Adds to the scores of a draw a normal error with the covariance of the beliefs, so that like things err alike.</summary>
public sealed class BeliefNoiseStep : IScoreStep
{
    private readonly double[][] factor;
    private readonly double[] normals;

    private BeliefNoiseStep(double[][] factor)
    {
        this.factor = factor;
        normals = new double[factor.Length];
    }

    /// <summary>Prepares the errors.</summary>
    /// <param name="count">How many scores.</param>
    /// <param name="covariance">The covariance of two of them, as of <see cref="Beliefs.ScoreBeliefs.Covariance"/>; it may be singular.</param>
    /// <exception cref="StatisticsInputException">No covariance.</exception>
    public static BeliefNoiseStep Of(int count, Func<int, int, double> covariance) => new(SemidefiniteFactor.Of(Require.AtLeast(count, 1, "The number of scores"), covariance));

    /// <inheritdoc/>
    public void Apply(Draw draw, Generator generator)
    {
        for (var i = 0; i < normals.Length; i++)
        {
            normals[i] = generator.NextNormal();
        }

        for (var i = 0; i < normals.Length; i++)
        {
            draw.Scores[i] += InnerProduct.Of(factor[i], normals.AsSpan(0, i + 1));
        }
    }
}
