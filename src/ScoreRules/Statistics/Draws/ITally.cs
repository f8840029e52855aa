namespace ScoreRules.Statistics.Draws;

/// <summary>Counts something over draws, one draw at a time, so that memory does not grow with their number.</summary>
public interface ITally
{
    /// <summary>Takes a draw into account.</summary>
    void Add(Draw draw);
}
