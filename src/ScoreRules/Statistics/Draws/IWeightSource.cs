namespace ScoreRules.Statistics.Draws;

/// <summary>Where the weights of a draw come from.</summary>
public interface IWeightSource
{
    /// <summary>How many weights a draw has.</summary>
    int Count { get; }

    /// <summary>Draws weights of 0 or more that sum to 1.</summary>
    /// <param name="generator">Where the random numbers come from.</param>
    /// <param name="weights">Filled; as long as <see cref="Count"/>.</param>
    void Next(Generator generator, Span<double> weights);
}
