using ScoreRules.Catalogue;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Comparing;

/// <summary>All standings of a judgement by the names of target and movement.</summary>
internal static class Standings
{
    /// <summary>The key of a row.</summary>
    public static (string Target, string Movement) Key(PlacementRow row) => (NameText.Key(row.Target.Name), NameText.Key(row.Movement.Name));

    /// <summary>Reads them off.</summary>
    public static Dictionary<(string Target, string Movement), Standing> Of(Judgement judgement)
    {
        var all = new Dictionary<(string Target, string Movement), Standing>();
        foreach (var ranking in judgement.Rankings)
        {
            foreach (var placement in ranking.Placements)
            {
                all[Key(placement.Row)] = new Standing(placement.Gap, placement.Rank, placement.Tier.Index);
            }

            foreach (var row in ranking.LeftOut)
            {
                all[Key(row.Row)] = new Standing(row.Score - BenchmarkScore(ranking), ranking.Placements.Length + 1, judgement.Ruleset.Tiers.Length);
            }
        }

        return all;
    }

    // A ranking has a benchmark, but it may be left out itself.
    private static double BenchmarkScore(TargetRanking ranking) =>
        ranking.Placements.FirstOrDefault() is { } first ? first.Score - first.Gap
        : ranking.LeftOut.FirstOrDefault(row => row.Row.Index == ranking.Benchmark?.Index)?.Score ?? double.NaN;
}
