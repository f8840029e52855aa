using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Explanation;

namespace ScoreRules.Publishing.Answers;

/// <summary>Cautions of the movements that an answer speaks of, each said once.</summary>
internal static class AnswerCautions
{
    /// <summary>The cautions, most serious first, each with the movements it is about; marked where it could not be told of any.</summary>
    public static ImmutableArray<(ShownCaution Shown, ImmutableArray<string> Movements)> Of(IEnumerable<PlacementRow> rows, Explainer explainer) =>
    [
        .. rows.DistinctBy(row => row.Index)
            .SelectMany(row => explainer.CautionsOf(row).Select(shown => (shown, row.Movement.Name)))
            .GroupBy(pair => pair.shown.Caution)
            .OrderByDescending(group => group.Key.Severity).ThenBy(group => group.Key.Text, StringComparer.Ordinal)
            .Select(group => (new ShownCaution(group.Key, group.Any(pair => pair.shown.IsUndecided)), group.Select(pair => pair.Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToImmutableArray())),
    ];
}
