using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>The tier of every placement of a judgement, by its row; null where it is left out.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Tiers">Their tiers.</param>
internal sealed record TierOfRow(ImmutableArray<PlacementRow> Rows, TierDefinition?[] Tiers)
{
    /// <summary>Reads them off.</summary>
    public static TierOfRow Of(Judgement judgement)
    {
        var rows = judgement.Inferred!.Facts.Rows;
        var tiers = new TierDefinition?[rows.Length];
        foreach (var placement in judgement.Rankings.SelectMany(ranking => ranking.Placements))
        {
            tiers[placement.Row.Index] = placement.Tier;
        }

        return new TierOfRow(rows, tiers);
    }

    /// <summary>The placements that stand in another tier in a judgement of the same rows.</summary>
    public ImmutableArray<MovedRow> MovedIn(Judgement judgement)
    {
        var after = Of(judgement).Tiers;
        return [.. Rows.Where(row => Tiers[row.Index]?.Index != after[row.Index]?.Index).Select(row => new MovedRow(row, Tiers[row.Index], after[row.Index]))];
    }
}
