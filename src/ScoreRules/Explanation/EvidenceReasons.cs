using System.Collections.Immutable;
using ScoreRules.Evidence;

namespace ScoreRules.Explanation;

/// <summary>What studies and judgements by another movement add to the gap: the movement's own move, and the benchmark's the other way.</summary>
internal static class EvidenceReasons
{
    /// <summary>The reasons; with those of criteria and awards they sum to the gap.</summary>
    public static IEnumerable<Reason> Of(PlacementExplanation explained)
    {
        if (explained is not { Evidence: { } own } || explained.Placement?.IsBenchmark == true)
        {
            yield break;
        }

        if (ByStudies(own, explained.BenchmarkMoved) is { } studies)
        {
            yield return studies;
        }

        if (own is { Place: { } place } && own.PlacePoints != 0)
        {
            yield return new Reason("personal judgement", own.PlacePoints, place.Info, null);
        }

        if (explained.BenchmarkMoved is { Place: { } other } moved && moved.PlacePoints != 0)
        {
            yield return new Reason("personal judgement", -moved.PlacePoints, other.Info, null, IsBenchmarks: true);
        }
    }

    private static Reason? ByStudies(RowEvidence own, RowEvidence? benchmark)
    {
        var (mine, others) = (Acting(own), benchmark is null ? [] : Acting(benchmark));
        var studies = mine.Concat(others).Select(pull => pull.Claim.Study).DistinctBy(study => study.Name).ToList();
        if (studies.Count == 0)
        {
            return null;
        }

        var name = studies.Count == 1 ? $"study {studies[0].Name}" : $"{studies.Count} studies";
        return new Reason(name, own.ByStudies - (benchmark?.ByStudies ?? 0), studies[0].Info, null, mine.IsEmpty) { Studies = mine.IsEmpty ? others : mine, BenchmarkMoved = benchmark?.ByStudies ?? 0 };
    }

    private static ImmutableArray<StudyPull> Acting(RowEvidence moved) => [.. moved.Pulls.Concat(moved.Held).Where(pull => pull.Points != 0)];
}
