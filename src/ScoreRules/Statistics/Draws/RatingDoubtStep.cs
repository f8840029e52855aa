namespace ScoreRules.Statistics.Draws;

/// <summary>Lets ratings be one step off, each by itself, with a stated probability; a score changes by weight times change of value.</summary>
public sealed class RatingDoubtStep : IScoreStep
{
    private readonly RatingDoubt[] doubts;

    private RatingDoubtStep(RatingDoubt[] doubts) => this.doubts = doubts;

    /// <summary>Takes the ratings that may be off.</summary>
    /// <exception cref="StatisticsInputException">A probability out of its range, or a change that is no number.</exception>
    public static RatingDoubtStep Of(IReadOnlyList<RatingDoubt> doubts)
    {
        foreach (var doubt in doubts)
        {
            Require.Finite(doubt.StepDown, "A step down");
            Require.Finite(doubt.StepUp, "A step up");
            if (doubt.Probability is not (>= 0 and <= 0.5))
            {
                throw new StatisticsInputException("The probability that a rating is one step off to one side must lie from 0 to 0.5.");
            }
        }

        return new RatingDoubtStep([.. doubts]);
    }

    /// <inheritdoc/>
    public void Apply(Draw draw, Generator generator)
    {
        foreach (ref readonly var doubt in doubts.AsSpan())
        {
            var uniform = generator.NextUniform();
            if (uniform < doubt.Probability)
            {
                draw.Scores[doubt.Thing] += draw.Weights[doubt.Criterion] * doubt.StepDown;
            }
            else if (uniform >= 1 - doubt.Probability)
            {
                draw.Scores[doubt.Thing] += draw.Weights[doubt.Criterion] * doubt.StepUp;
            }
        }
    }
}
