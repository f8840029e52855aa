using BenchmarkDotNet.Attributes;
using ScoreRules.Benchmarks.Workloads;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Benchmarks.Own;

/// <summary>Reading rule text: parse and bind.</summary>
[MemoryDiagnoser]
public class ReadingBenchmarks
{
    private string hundredRules = null!;
    private string megabyte = null!;

    /// <summary>Writes the texts.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        var rules = RuleBaseGenerator.Make(100);
        hundredRules = RuleText.Write(rules);
        var movements = RuleText.Movements(rules, Rows.Make(rules.Attributes, 3_000));
        megabyte = hundredRules + movements[..movements.LastIndexOf("\n\n", 1_000_000 - hundredRules.Length, StringComparison.Ordinal)] + "\n";
    }

    /// <summary>A house of 100 rules.</summary>
    [Benchmark]
    public object HundredRules() => Bind(hundredRules);

    /// <summary>The same with movements, one megabyte in all.</summary>
    [Benchmark]
    public object OneMegabyte() => Bind(megabyte);

    private static BoundRuleset Bind(string text) => RulesetReader.Read([new SourceText("house.rules", text)]).Bind([]);
}
