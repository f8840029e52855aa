using System.Collections.Immutable;
using ScoreRules.Statistics.Attribution;

namespace ScoreRules.Comparing;

/// <summary>
/// Divides every move among the blocks that differ: each mixture of the two houses is judged, and the part of a block is what it adds,
/// averaged over all orders in which blocks can be swapped.
/// </summary>
internal sealed class Attribution
{
    private const int Figures = 3;

    private readonly (string Target, string Movement)[] keys;
    private readonly double[][] parts;
    private readonly Dictionary<(string Target, string Movement), int> positions;

    private Attribution(ImmutableArray<RuleBlock> blocks, (string Target, string Movement)[] keys, List<double[]> values)
    {
        (Blocks, this.keys, Values) = (blocks, keys, values);
        positions = keys.Select((key, position) => (key, position)).ToDictionary(pair => pair.key, pair => pair.position);
        parts = ShapleyValue.Parts(blocks.Length, values);
    }

    /// <summary>The blocks that differ.</summary>
    public ImmutableArray<RuleBlock> Blocks { get; }

    private List<double[]> Values { get; }

    /// <summary>Judges all mixtures.</summary>
    /// <param name="old">The old house.</param>
    /// <param name="now">The new house.</param>
    /// <param name="blocks">The blocks that differ.</param>
    /// <param name="progress">Told how many mixtures are judged and how many there are.</param>
    public static Attribution Of(Judgement old, Judgement now, ImmutableArray<RuleBlock> blocks, Action<int, int>? progress)
    {
        var (before, after) = (Standings.Of(old), Standings.Of(now));
        var common = before.Keys.Where(after.ContainsKey).Order().ToArray();
        var swap = new BlockSwap(old, now);
        var values = new List<double[]>();
        for (var set = 0; set < 1 << blocks.Length; set++)
        {
            var taken = blocks.Where((_, position) => (set >> position & 1) == 1).ToHashSet();
            var mixed = set == 0 ? before : set == (1 << blocks.Length) - 1 ? after : Standings.Of(swap.Judged(taken));
            values.Add([.. common.SelectMany(key => mixed.TryGetValue(key, out var at) ? new[] { at.Gap, at.Rank, at.Tier } : [double.NaN, double.NaN, double.NaN])]);
            progress?.Invoke(values.Count, 1 << blocks.Length);
        }

        return new Attribution(blocks, common, values);
    }

    /// <summary>The parts of a placement that both houses have; null where some mixture does not rank its target.</summary>
    public ImmutableArray<(RuleBlock Block, Standing Part)>? Of((string Target, string Movement) key)
    {
        if (!positions.TryGetValue(key, out var position))
        {
            return null;
        }

        var at = position * Figures;
        var all = Blocks.Select((block, cause) => (block, new Standing(parts[cause][at], parts[cause][at + 1], parts[cause][at + 2]))).ToImmutableArray();
        return all.All(part => double.IsFinite(part.Item2.Gap)) ? all : null;
    }

    /// <summary>The ranks in one target, in the order of the names, with one block alone swapped; null for none.</summary>
    public double[] RanksWith(RuleBlock? block, string target)
    {
        var set = block is { } one ? 1 << Blocks.IndexOf(one) : 0;
        return [.. keys.Select((key, position) => (key, position)).Where(pair => pair.key.Target == target).Select(pair => Values[set][(pair.position * Figures) + 1])];
    }
}
