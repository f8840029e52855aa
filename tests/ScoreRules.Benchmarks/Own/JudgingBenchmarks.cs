using BenchmarkDotNet.Attributes;
using ScoreRules.Benchmarks.Workloads;
using ScoreRules.Catalogue;
using ScoreRules.Explanation;
using ScoreRules.Inference;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Scoring;
using ScoreRules.Tiering;

namespace ScoreRules.Benchmarks.Own;

/// <summary>The parts of judging a house of 100 rules.</summary>
[MemoryDiagnoser]
public class JudgingBenchmarks
{
    private RuleBase rules = null!;
    private EngineRun engine = null!;
    private InferenceResult inferred = null!;
    private ScoreTable scores = null!;
    private TargetRanking ranking = null!;
    private Explainer explainer = null!;

    /// <summary>Movements.</summary>
    [Params(1_000, 10_000)]
    public int Movements { get; set; }

    /// <summary>Prepares a house.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        rules = RuleBaseGenerator.Make(100);
        engine = new EngineRun(rules, Rows.Make(rules.Attributes, Movements));
        (inferred, scores) = engine.Run();
        ranking = Rank();
        explainer = new Explainer(engine.Ruleset, inferred, scores);
    }

    /// <summary>Compile the rules.</summary>
    [Benchmark]
    public object Compile() => InferencePlan.Compile(engine.Ruleset);

    /// <summary>Infer and score, rules compiled, columns in place.</summary>
    [Benchmark]
    public object InferAndScore() => engine.Run();

    /// <summary>A weight was edited: scores, tiers and ranks anew from the same inference.</summary>
    [Benchmark]
    public object EditAWeight()
    {
        scores = Scorer.Score(engine.Ruleset, inferred);
        return Rank();
    }

    /// <summary>A movement was edited: columns, inference, scores and ranks anew with the same compiled rules.</summary>
    [Benchmark]
    public object EditAMovement()
    {
        var facts = FactTable.Build(engine.Ruleset, [.. engine.Placed], new FactTableInputs([], null));
        var found = engine.Compiled.Run(facts);
        return EngineRun.Rank(engine.Ruleset, engine.Catalogue, found);
    }

    /// <summary>A rule was edited: everything but the catalogue anew.</summary>
    [Benchmark]
    public object EditARule()
    {
        var found = InferencePlan.Compile(engine.Ruleset).Run(engine.Facts);
        return EngineRun.Rank(engine.Ruleset, engine.Catalogue, found);
    }

    /// <summary>The tree behind one placement, no wording.</summary>
    [Benchmark]
    public object ExplainOne() => explainer.Explain(ranking, ranking.Placements[0].Row.Movement)!;

    private TargetRanking Rank() => new Ranker(engine.Ruleset, engine.Catalogue, inferred, scores.Principle, scores.Principle, new DiagnosticBag()).Rank()[0];
}
