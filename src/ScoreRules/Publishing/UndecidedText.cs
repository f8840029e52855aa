using ScoreRules.Explanation;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>Rules that could not be decided for some movements, with the fact that is missing.</summary>
internal static class UndecidedText
{
    private const int MostNames = 5;

    /// <summary>One line for each rule.</summary>
    public static IEnumerable<string> Lines(IReadOnlyList<TargetRanking> rankings, Explainer explainer)
    {
        var explained = rankings.SelectMany(ranking => ranking.Placements.Select(placement => explainer.Explain(ranking, placement.Row.Movement)!));
        var undecided = explained.SelectMany(tree => tree.Rules.Where(rule => rule.Effect == RuleEffect.CouldNotTell).Select(rule => (rule, tree.Row.Movement.Name)));
        return undecided.GroupBy(pair => pair.rule.Rule.Info).Select(group =>
        {
            var missing = group.Select(pair => pair.rule.Decisive?.Attribute?.Name).OfType<string>().Distinct(StringComparer.Ordinal);
            var movements = group.Select(pair => pair.Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
            return $"{group.Key.Title} ({group.Key.Location}): {string.Join(", ", missing)} is not recorded for {string.Join(", ", movements.Take(MostNames))}{(movements.Count > MostNames ? $" and {NumberText.Count(movements.Count - MostNames)} more" : "")}";
        });
    }
}
