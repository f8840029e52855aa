using ScoreRules.Language.Text;
using ScoreRules.Statistics.Agreement;
using ScoreRules.Tiering;

namespace ScoreRules.Comparing;

/// <summary>How far two lists of one target agree.</summary>
internal static class ListAgreement
{
    /// <summary>Kendall's tau-b over the movements ranked in both, and how many those are.</summary>
    public static (double? TauB, int Common) TauB(TargetRanking old, TargetRanking now)
    {
        var before = old.Placements.ToDictionary(placement => NameText.Key(placement.Row.Movement.Name), placement => (double)placement.Rank, StringComparer.Ordinal);
        var both = now.Placements.Where(placement => before.ContainsKey(NameText.Key(placement.Row.Movement.Name))).ToList();
        var first = both.ConvertAll(placement => before[NameText.Key(placement.Row.Movement.Name)]);
        return (both.Count < 2 ? null : RankCorrelation.TauB(first, both.ConvertAll(placement => (double)placement.Rank)), both.Count);
    }

    /// <summary>Agreement at the top; null where a list is empty.</summary>
    public static RankBiasedOverlap? Top(TargetRanking old, TargetRanking now, double persistence)
    {
        var (before, after) = (Steps(old), Steps(now));
        var depth = Math.Min(before.Count, after.Count);
        return depth == 0 ? null : RankBiasedOverlap.OfGroups(before[..depth], after[..depth], persistence);
    }

    private static List<IReadOnlyList<string>> Steps(TargetRanking ranking) =>
        [.. ranking.Placements.GroupBy(placement => placement.Rank).Select(step => (IReadOnlyList<string>)[.. step.Select(placement => NameText.Key(placement.Row.Movement.Name))])];
}
