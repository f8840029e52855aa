namespace ScoreRules.Statistics.Draws;

/// <summary>How often each thing scores above each other one (Leskinen, Viitanen, Kangas and Kangas 2006, Forest Science 52:304). Equal scores count half for each.</summary>
public sealed class WinTally : ITally
{
    private readonly double[][] wins;
    private int draws;

    /// <summary>Makes an empty tally.</summary>
    /// <param name="things">How many things are compared, 1 or more.</param>
    /// <exception cref="StatisticsInputException">Nothing to compare.</exception>
    public WinTally(int things) => wins = [.. Enumerable.Range(0, Require.AtLeast(things, 1, "The number of things to compare")).Select(_ => new double[things])];

    /// <inheritdoc/>
    public void Add(Draw draw)
    {
        draws++;
        var scores = draw.Scores;
        for (var i = 0; i < scores.Length; i++)
        {
            var (own, row) = (scores[i], wins[i]);
            for (var j = 0; j < row.Length; j++)
            {
                row[j] += own > scores[j] ? 1 : own == scores[j] ? 0.5 : 0;
            }
        }
    }

    /// <summary>The share of draws in which the first scores above the second.</summary>
    /// <exception cref="StatisticsInputException">No such thing, or nothing counted yet.</exception>
    public double Share(int first, int second) =>
        wins[Require.Index(first, wins.Length, "A thing")][Require.Index(second, wins.Length, "A thing")] / Require.AtLeast(draws, 1, "The number of draws");
}
