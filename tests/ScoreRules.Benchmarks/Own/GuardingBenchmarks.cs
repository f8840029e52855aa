using BenchmarkDotNet.Attributes;
using ScoreRules.Benchmarks.Workloads;
using ScoreRules.Comparing;
using ScoreRules.Guarding.Breaking;
using ScoreRules.Houses;

namespace ScoreRules.Benchmarks.Own;

/// <summary>A house of 40 rules and 130 movements broken in every way, and compared with an edition in which five blocks of rules differ.</summary>
[MemoryDiagnoser]
public class GuardingBenchmarks
{
    private Judgement house = null!;
    private Judgement edition = null!;

    /// <summary>Judges the houses; says how many breakages there are.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        var rules = RuleBaseGenerator.Make(40);
        var movements = RuleText.Movements(rules, Rows.Make(rules.Attributes, 130));
        house = Judged(RuleText.Write(rules) + movements);
        edition = Judged(RuleText.Write(rules).Replace("from 70 points", "from 72 points", StringComparison.Ordinal).Replace("is at least", "is more than", StringComparison.Ordinal) + movements);
        Console.WriteLine(FormattableString.Invariant($"// {Breakages.Of(house.Ruleset).Length} breakages; {HouseComparer.Compare(house, edition).Blocks.Length} blocks differ"));
    }

    /// <summary>Judging the house once more: what everything else is a multiple of.</summary>
    [Benchmark(Baseline = true)]
    public object JudgeAgain() => Judge.Again(house, house.Ruleset, house.Catalogue);

    /// <summary>All breakages, and the pins.</summary>
    [Benchmark]
    public object BreakEverything() => new BreakageRun(house).Run();

    /// <summary>Two editions, every move divided among the blocks that differ.</summary>
    [Benchmark]
    public object CompareEditions() => HouseComparer.Compare(house, edition);

    private static Judgement Judged(string text)
    {
        var judgement = Judge.Run(new HouseSources([new HouseFile("house.rules", text, "", IsSpreadsheet: false)], []));
        return judgement.HasErrors ? throw new InvalidOperationException($"The generated house is wrong: {judgement.Findings[0].Headline}") : judgement;
    }
}
