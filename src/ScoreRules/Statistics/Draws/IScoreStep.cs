namespace ScoreRules.Statistics.Draws;

/// <summary>Something that happens to the scores of each draw after weights and values made them, in the order of the plan.</summary>
public interface IScoreStep
{
    /// <summary>Changes the scores of a draw.</summary>
    /// <param name="draw">The draw; its scores are changed in place.</param>
    /// <param name="generator">Where random numbers come from.</param>
    void Apply(Draw draw, Generator generator);
}
