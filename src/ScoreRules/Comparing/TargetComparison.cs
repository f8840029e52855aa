using System.Collections.Immutable;
using ScoreRules.Statistics.Agreement;
using ScoreRules.Tiering;

namespace ScoreRules.Comparing;

/// <summary>The lists of one target, before and after.</summary>
/// <param name="Old">The old list.</param>
/// <param name="New">The new list.</param>
/// <param name="Changes">What changed, in the order of the new list; then what is left out, then what is gone.</param>
public sealed record TargetComparison(TargetRanking Old, TargetRanking New, ImmutableArray<PlacementChange> Changes)
{
    /// <summary>The p of <see cref="Top"/>: the first ten ranks carry about 86 % of the weight.</summary>
    public const double Persistence = 0.9;

    /// <summary>Number of movements ranked in both lists.</summary>
    public int Common { get; init; }

    /// <summary>Kendall's tau-b over those; null where fewer than two are common or all share one rank.</summary>
    public double? TauB { get; init; }

    /// <summary>Agreement when the top matters more; null where a list is empty. The longer list counts as deep as the shorter one.</summary>
    public RankBiasedOverlap? Top { get; init; }

    /// <summary>What each block that differs does to this list.</summary>
    public ImmutableArray<BlockAlone> Blocks { get; init; } = [];
}
