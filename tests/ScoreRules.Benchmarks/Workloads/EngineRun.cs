using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Scoring;
using ScoreRules.Tiering;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>Our own engine, warm: rules compiled and columns of the catalogue in place.</summary>
internal sealed class EngineRun
{
    private readonly RuleBase rules;

    /// <summary>Binds, compiles and reads the catalogue.</summary>
    public EngineRun(RuleBase rules, Rows rows)
    {
        this.rules = rules;
        Ruleset = BoundHouse.Bind(rules, rows);
        Catalogue = CatalogueBuilder.Build(Ruleset, new DiagnosticBag());
        Placed = [.. PlacementRows.Build(Ruleset, Catalogue)];
        Facts = FactTable.Build(Ruleset, [.. Placed], new FactTableInputs([], null));
        Compiled = InferencePlan.Compile(Ruleset);
    }

    /// <summary>The house.</summary>
    public BoundRuleset Ruleset { get; }

    /// <summary>The movements.</summary>
    public MovementCatalogue Catalogue { get; }

    /// <summary>The rows.</summary>
    public IReadOnlyList<PlacementRow> Placed { get; }

    /// <summary>The columns.</summary>
    public FactTable Facts { get; }

    /// <summary>The rules, ready to run.</summary>
    public InferencePlan Compiled { get; }

    /// <summary>What is timed: infer and score.</summary>
    public (InferenceResult Inferred, ScoreTable Scores) Run()
    {
        var inferred = Compiled.Run(Facts);
        return (inferred, Scorer.Score(Ruleset, inferred));
    }

    /// <summary>Scores, tiers and order from an inference.</summary>
    public static IReadOnlyList<TargetRanking> Rank(BoundRuleset ruleset, MovementCatalogue catalogue, InferenceResult inferred)
    {
        var scores = Scorer.Score(ruleset, inferred).Principle;
        return new Ranker(ruleset, catalogue, inferred, scores, scores, new DiagnosticBag()).Rank();
    }

    /// <summary>What was found, in the form in which peers are compared.</summary>
    public PeerAnswers PeerAnswers(InferenceResult inferred, ScoreTable scores)
    {
        var calls = new Queue<BoundStatement>(Ruleset.Calls);
        var named = Acting(Ruleset).ToDictionary(rule => rule.Info.Name!, StringComparer.Ordinal);
        var held = rules.Rules.Select(rule => Words(inferred.Outcome(rule.Kind == RuleKind.Call ? calls.Dequeue() : named[rule.Name]).Effective));
        return new PeerAnswers([.. held], scores.Principle);
    }

    private static IEnumerable<ConditionalStatement> Acting(BoundRuleset ruleset) =>
        ruleset.Awards.Concat<ConditionalStatement>(ruleset.CancelOuts).Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Cautions).Concat(ruleset.Refusals);

    private static ulong[] Words(RowSet rows)
    {
        var words = new ulong[(rows.Size + 63) / 64];
        foreach (var row in rows)
        {
            words[row >> 6] |= 1UL << row;
        }

        return words;
    }
}
