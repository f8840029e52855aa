using ScoreRules.Statistics.Solving;

namespace ScoreRules.Statistics.Draws;

/// <summary>How draws are made: weights, then scores as award + sum of weight times value, then the steps. Everything in a draw is common to all things.</summary>
public sealed class DrawPlan
{
    private readonly IWeightSource weights;
    private readonly double[][] values;
    private readonly double[] awards;
    private readonly IScoreStep[] steps;

    private DrawPlan(IWeightSource weights, double[][] values, double[] awards, IScoreStep[] steps)
    {
        this.weights = weights;
        this.values = values;
        this.awards = awards;
        this.steps = steps;
    }

    /// <summary>Makes a plan.</summary>
    /// <param name="weights">Where weights come from.</param>
    /// <param name="values">For each thing its value on each criterion, in points when weights are shares of 1.</param>
    /// <param name="awards">For each thing its points besides; null for none.</param>
    /// <param name="steps">What happens to the scores after that, in this order; null for nothing.</param>
    /// <exception cref="StatisticsInputException">Nothing to rank, lists of different length, or no numbers.</exception>
    public static DrawPlan Of(IWeightSource weights, IReadOnlyList<IReadOnlyList<double>> values, IReadOnlyList<double>? awards = null, IReadOnlyList<IScoreStep>? steps = null)
    {
        Require.AtLeast(values.Count, 1, "The number of things to rank");
        foreach (var row in values)
        {
            Require.SameLength(weights.Count, row.Count, "Weights and the values of a thing");
        }

        Require.SameLength(values.Count, awards?.Count ?? values.Count, "Things and their awards");
        return new DrawPlan(
            weights,
            [.. values.Select(row => row.Select(value => Require.Finite(value, "A value")).ToArray())],
            awards is null ? new double[values.Count] : [.. awards.Select(award => Require.Finite(award, "An award"))],
            [.. steps ?? []]);
    }

    /// <summary>Makes draws one after the other and gives each to all tallies.</summary>
    /// <param name="count">How many, 1 or more; memory does not depend on it.</param>
    /// <param name="seed">Which sequence; the same seed gives the same draws.</param>
    /// <param name="tallies">What is counted.</param>
    /// <exception cref="StatisticsInputException">No draws.</exception>
    public void Run(int count, ulong seed, IReadOnlyList<ITally> tallies)
    {
        Require.AtLeast(count, 1, "The number of draws");
        var generator = new Generator(seed);
        var draw = new Draw(values.Length, weights.Count);
        ITally[] all = [.. tallies];
        for (var i = 0; i < count; i++)
        {
            Fill(draw, generator);
            foreach (var tally in all)
            {
                tally.Add(draw);
            }
        }
    }

    private void Fill(Draw draw, Generator generator)
    {
        weights.Next(generator, draw.Weights);
        for (var i = 0; i < values.Length; i++)
        {
            draw.Scores[i] = awards[i] + InnerProduct.Of(values[i], draw.Weights);
        }

        foreach (var step in steps)
        {
            step.Apply(draw, generator);
        }

        draw.Renew();
    }
}
