namespace ScoreRules.Statistics.Draws;

/// <summary>How often each thing falls into each tier. A score on a border belongs to the better tier.</summary>
public sealed class TierTally : ITally
{
    private readonly double[] cuts;
    private readonly int? benchmark;
    private readonly int[][] counts;
    private int draws;

    /// <summary>Makes an empty tally.</summary>
    /// <param name="things">How many things are ranked, 1 or more.</param>
    /// <param name="cuts">The lower borders of all tiers but the lowest, falling.</param>
    /// <param name="benchmark">The thing whose score of the same draw is taken off first, so that the cuts are gaps to it; null to cut by score.</param>
    /// <exception cref="StatisticsInputException">Nothing to rank, cuts that do not fall, or no such benchmark.</exception>
    public TierTally(int things, IReadOnlyList<double> cuts, int? benchmark = null)
    {
        Require.AtLeast(things, 1, "The number of things to rank");
        this.cuts = TierCuts.Checked(cuts);
        this.benchmark = benchmark is { } place ? Require.Index(place, things, "The benchmark") : null;
        counts = [.. Enumerable.Range(0, things).Select(_ => new int[cuts.Count + 1])];
    }

    /// <inheritdoc/>
    public void Add(Draw draw)
    {
        draws++;
        var zero = benchmark is { } place ? draw.Scores[place] : 0;
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i][TierCuts.Tier(draw.Scores[i] - zero, cuts)]++;
        }
    }

    /// <summary>The share of draws in which a thing is in a tier; over all tiers they sum to 1.</summary>
    /// <param name="thing">The place of the thing.</param>
    /// <param name="tier">0 for the best.</param>
    /// <exception cref="StatisticsInputException">No such thing or tier, or nothing counted yet.</exception>
    public double Share(int thing, int tier) =>
        (double)counts[Require.Index(thing, counts.Length, "A thing")][Require.Index(tier, cuts.Length + 1, "A tier")] / Require.AtLeast(draws, 1, "The number of draws");
}
