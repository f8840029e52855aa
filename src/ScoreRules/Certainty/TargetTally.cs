using System.Collections.Immutable;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Certainty;

/// <summary>Counts where the movements of a target land: tiers after limits and judgement, ranks, gaps, who is ahead of whom. Its memory does not grow with the number of tries.</summary>
internal sealed class TargetTally
{
    private const double Step = 0.1;
    private const int Reach = 2000;

    private readonly ImmutableArray<Placement> placements;
    private readonly TierRule tiers;
    private readonly LimitTry[] limits;
    private readonly ActingRows acting;
    private readonly int last;
    private readonly int[][] tierCounts;
    private readonly int[][] rankCounts;
    private readonly int[][] ahead;
    private readonly int[][] gaps;
    private readonly (int Tier, double Score, int Position)[] order;
    private readonly double[] rising;

    /// <summary>Makes an empty tally.</summary>
    public TargetTally(BoundRuleset ruleset, TargetRanking ranking, Admitted admitted)
    {
        placements = ranking.Placements;
        tiers = new TierRule(ruleset.Tiers);
        last = ruleset.Tiers.Length - 1;
        limits = [.. placements.Select((placement, position) => new LimitTry(ruleset, placement, position, admitted))];
        acting = new ActingRows(ruleset.Limits, placements.Select(placement => placement.Row));
        tierCounts = Table(placements.Length, ruleset.Tiers.Length);
        rankCounts = Table(placements.Length, placements.Length);
        ahead = Table(placements.Length, placements.Length);
        gaps = Table(placements.Length, (2 * Reach) + 1);
        order = new (int, double, int)[placements.Length];
        rising = new double[placements.Length];
    }

    /// <summary>Counts one try.</summary>
    /// <param name="own">Scores by placement.</param>
    /// <param name="benchmark">The benchmark's score; 0 without one.</param>
    /// <param name="right">Which doubtful statements are in force.</param>
    /// <param name="inferred">What the rules find with them.</param>
    public void Add(double[] own, double benchmark, ReadOnlySpan<bool> right, InferenceResult inferred)
    {
        own.CopyTo(rising, 0);
        Array.Sort(rising);
        var holding = acting.In(inferred);
        for (var i = 0; i < own.Length; i++)
        {
            var gap = own[i] - benchmark;
            var better = tiers.DependsOnOthers ? rising.Length - Above(own[i]) : 0;
            var tier = limits[i].Apply(tiers.Of(own[i], gap, better, own.Length).Index, right, holding, last);
            tierCounts[i][tier]++;
            gaps[i][Bin(gap)]++;
            order[i] = (tier, -own[i], i);
            Compare(own, i);
        }

        Array.Sort(order);
        for (var rank = 0; rank < order.Length; rank++)
        {
            rankCounts[order[rank].Position][rank]++;
        }
    }

    /// <summary>What was counted.</summary>
    public TargetCertainty Close(TargetRanking ranking, int tries) => new(ranking, tries, [.. placements.Select((placement, i) => new PlacementCertainty(
        placement, Shares(tierCounts[i], tries), Shares(rankCounts[i], tries), Quantile(gaps[i], tries, 0.1), Quantile(gaps[i], tries, 0.9)))])
    {
        Ahead = [.. ahead.Select(row => row.Select(twice => twice / (2.0 * tries)).ToArray())],
    };

    private void Compare(double[] own, int i)
    {
        var row = ahead[i];
        for (var j = 0; j < row.Length; j++)
        {
            row[j] += own[i] > own[j] ? 2 : own[i] == own[j] ? 1 : 0;
        }
    }

    private int Above(double score)
    {
        var found = Array.BinarySearch(rising, score);
        while (found >= 0 && found < rising.Length && rising[found] == score)
        {
            found++;
        }

        return found < 0 ? ~found : found;
    }

    private static int Bin(double gap) => Math.Clamp((int)Math.Round(gap / Step), -Reach, Reach) + Reach;

    private static double Quantile(int[] counts, int tries, double share)
    {
        var (sum, bin) = (0, 0);
        while (bin < counts.Length - 1 && (sum += counts[bin]) < share * tries)
        {
            bin++;
        }

        return Step * (bin - Reach);
    }

    private static ImmutableArray<double> Shares(int[] counts, int tries) => [.. counts.Select(count => (double)count / tries)];

    private static int[][] Table(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new int[columns])];
}
