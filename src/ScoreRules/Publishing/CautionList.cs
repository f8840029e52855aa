using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>Cautions of a ranking, gathered by their place: each said once, with the movements it is about.</summary>
internal sealed class CautionList
{
    private readonly List<(CautionDefinition Caution, bool Undecided, PlacementText Place)> all = [];

    /// <summary>Gathers the cautions of rankings.</summary>
    public CautionList(IEnumerable<TargetRanking> rankings, Explainer explainer)
    {
        foreach (var ranking in rankings)
        {
            foreach (var row in ranking.Placements.Select(placement => placement.Row))
            {
                all.AddRange(explainer.CautionsOf(row).Select(shown => (shown.Caution, shown.IsUndecided, new PlacementText(row.Movement.Name))));
            }
        }
    }

    /// <summary>Cautions of one place, most serious first, with the movements they are about.</summary>
    public ImmutableArray<(CautionDefinition Caution, bool Undecided, ImmutableArray<string> Movements)> At(params CautionPlace[] places) =>
    [
        .. all.Where(entry => places.Contains(entry.Caution.Place))
            .GroupBy(entry => entry.Caution)
            .OrderByDescending(group => group.Key.Severity).ThenBy(group => group.Key.Text, StringComparer.Ordinal)
            .Select(group => (group.Key, group.Any(entry => entry.Undecided), group.Select(entry => entry.Place.Movement).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToImmutableArray())),
    ];

    private sealed record PlacementText(string Movement);
}
