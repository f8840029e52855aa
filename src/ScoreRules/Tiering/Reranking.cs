using System.Collections.Immutable;

namespace ScoreRules.Tiering;

/// <summary>Counts ranks anew where some placements were taken out.</summary>
internal static class Reranking
{
    /// <summary>The placements with ranks from 1; they must stand in the order of a ranking.</summary>
    public static ImmutableArray<Placement> WithRanks(IReadOnlyList<Placement> ordered)
    {
        var ranked = ImmutableArray.CreateBuilder<Placement>(ordered.Count);
        for (var i = 0; i < ordered.Count; i++)
        {
            var tiedAbove = i > 0 && Same(ordered[i - 1], ordered[i]);
            var tiedBelow = i + 1 < ordered.Count && Same(ordered[i], ordered[i + 1]);
            ranked.Add(ordered[i] with { Rank = tiedAbove ? ranked[i - 1].Rank : i + 1, IsTied = tiedAbove || tiedBelow });
        }

        return ranked.MoveToImmutable();
    }

    private static bool Same(Placement left, Placement right) =>
        left.Tier.Index == right.Tier.Index && Rounding.Compared(left.Score) == Rounding.Compared(right.Score);
}
