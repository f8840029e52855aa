using ScoreRules.Answers.Audit;

namespace ScoreRules.Publishing.Answers;

/// <summary>What is said beside a movement that stands below others it equals or beats on every criterion and award.</summary>
internal static class NowhereWorseText
{
    private const int MostNamed = 3;

    /// <summary>A sentence for each cause.</summary>
    /// <param name="pairs">Pairs with one and the same movement as the one that is nowhere worse, best placed first.</param>
    public static IEnumerable<string> Of(IEnumerable<DominanceFinding> pairs) =>
        pairs.GroupBy(AuditWords.Cause, StringComparer.Ordinal).Select(group => $"Its marks equal or beat those of {Named([.. group.Select(pair => pair.Above.Row.Movement.Name)])} on every criterion and award, yet it stands below. {group.Key}");

    // Those that stand nearest above are of most interest to whoever chooses between them.
    private static string Named(List<string> names) =>
        names.Count <= MostNamed ? $"the {FactText.Join(names)}"
        : $"the {string.Join(", ", names.TakeLast(MostNamed))} and {NumberText.Count(names.Count - MostNamed)} more";
}
