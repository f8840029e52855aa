namespace ScoreRules.Statistics.Draws;

/// <summary>
/// How often each thing takes each rank, and the mean of the weights under which it comes first (rank acceptability and central weights:
/// Lahdelma, Hokkanen and Salminen 1998, European Journal of Operational Research 106:137; Lahdelma and Salminen 2001, Operations Research
/// 49:444). Things of equal score share their ranks evenly.
/// </summary>
public sealed class RankTally : ITally
{
    private readonly double[][] counts;
    private readonly double[][] weights;
    private int draws;

    /// <summary>Makes an empty tally.</summary>
    /// <param name="things">How many things are ranked, 1 or more.</param>
    /// <param name="criteria">How many weights a draw has; 0 when they do not matter.</param>
    /// <exception cref="StatisticsInputException">Nothing to rank.</exception>
    public RankTally(int things, int criteria)
    {
        Require.AtLeast(things, 1, "The number of things to rank");
        counts = [.. Enumerable.Range(0, things).Select(_ => new double[things])];
        weights = [.. Enumerable.Range(0, things).Select(_ => new double[Require.AtLeast(criteria, 0, "The number of weights")])];
    }

    /// <inheritdoc/>
    public void Add(Draw draw)
    {
        draws++;
        var order = draw.BestFirst;
        for (var from = 0; from < order.Length;)
        {
            var to = from + 1;
            while (to < order.Length && draw.Scores[order[to]] == draw.Scores[order[from]])
            {
                to++;
            }

            Share(draw, order[from..to], from);
            from = to;
        }
    }

    /// <summary>The share of draws in which a thing takes a rank; over all ranks they sum to 1.</summary>
    /// <param name="thing">The place of the thing.</param>
    /// <param name="rank">0 for the best.</param>
    /// <exception cref="StatisticsInputException">No such thing or rank, or nothing counted yet.</exception>
    public double Acceptability(int thing, int rank) =>
        counts[Require.Index(thing, counts.Length, "A thing")][Require.Index(rank, counts.Length, "A rank")] / Require.AtLeast(draws, 1, "The number of draws");

    /// <summary>Count of <see cref="Acceptability"/>; a whole number when there were no ties.</summary>
    /// <exception cref="StatisticsInputException">No such thing or rank.</exception>
    public double Count(int thing, int rank) => counts[Require.Index(thing, counts.Length, "A thing")][Require.Index(rank, counts.Length, "A rank")];

    /// <summary>The mean of the weights that put a thing first; null when none did.</summary>
    /// <exception cref="StatisticsInputException">No such thing.</exception>
    public IReadOnlyList<double>? CentralWeights(int thing)
    {
        var first = Count(thing, 0);
        return first == 0 ? null : [.. weights[thing].Select(sum => sum / first)];
    }

    private void Share(Draw draw, ReadOnlySpan<int> tied, int from)
    {
        var share = 1.0 / tied.Length;
        foreach (var thing in tied)
        {
            for (var rank = from; rank < from + tied.Length; rank++)
            {
                counts[thing][rank] += share;
            }

            for (var k = 0; from == 0 && k < weights[thing].Length; k++)
            {
                weights[thing][k] += share * draw.Weights[k];
            }
        }
    }
}
