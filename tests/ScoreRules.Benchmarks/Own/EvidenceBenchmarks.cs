using BenchmarkDotNet.Attributes;
using ScoreRules.Certainty;
using ScoreRules.Evidence;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Benchmarks.Own;

/// <summary>The house of Longreach, its 130 movements and eight studies: weighing them, trying out how sure placements are, and judging it as a whole.</summary>
[MemoryDiagnoser]
public class EvidenceBenchmarks
{
    private Judgement house = null!;

    /// <summary>Judges the house.</summary>
    [GlobalSetup]
    public void Prepare() => house = Judge.Run(HouseFolder.Read(Path.Combine(Root(), "rulesets", "longreach")));

    /// <summary>Judging the house once more, studies included.</summary>
    [Benchmark(Baseline = true)]
    public object JudgeAgain() => Judge.Again(house, house.Ruleset, house.Catalogue);

    /// <summary>Weighing its studies alone.</summary>
    [Benchmark]
    public object WeighStudies() => EvidenceWeigher.Weigh(house.Ruleset, house.Catalogue, house.Inferred!.Facts.Rows, house.Scores!, new DiagnosticBag());

    /// <summary>Ten thousand tries over all its targets: weights, beliefs, principles, studies, kept orders.</summary>
    [Benchmark]
    public object TryOut() => HouseCertainty.Of(house);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ScoreRules.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The benchmark runs inside the repository.");
    }
}
