using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>What the rules found.</summary>
public sealed class InferenceResult
{
    private readonly IReadOnlyDictionary<BoundStatement, RuleOutcome> outcomes;
    private readonly IReadOnlyDictionary<string, ThreeValuedSet> concepts;

    private readonly ILookup<string, CallDefinition> calls;
    private readonly ConditionEvaluator evaluator;

    internal InferenceResult(BoundRuleset ruleset, FactTable facts, IReadOnlyDictionary<BoundStatement, RuleOutcome> outcomes, IReadOnlyDictionary<string, ThreeValuedSet> concepts, int firings)
    {
        Facts = facts;
        calls = ruleset.Calls.ToLookup(call => NameText.Key(call.Fact), StringComparer.Ordinal);
        evaluator = new ConditionEvaluator(facts);
        this.outcomes = outcomes;
        this.concepts = concepts;
        Firings = firings;
    }

    /// <summary>The facts, worked-out columns included.</summary>
    public FactTable Facts { get; }

    /// <summary>How many rules fired: one for each statement and one for each called fact.</summary>
    public int Firings { get; }

    /// <summary>What became of a call or a rule.</summary>
    public RuleOutcome Outcome(BoundStatement statement) => outcomes[statement];

    /// <summary>The statements that make a called fact, in the order of the house.</summary>
    public IEnumerable<CallDefinition> CallsOf(string fact) => calls[NameText.Key(fact)];

    /// <summary>Where a called fact holds; nowhere when nothing makes it.</summary>
    public ThreeValuedSet Concept(string name) => concepts.GetValueOrDefault(NameText.Key(name)) ?? ThreeValuedSet.None(Facts.RowCount);

    /// <summary>What is known of a test on one row.</summary>
    internal Verdict VerdictOf(Condition condition, int row) => evaluator.Evaluate(condition, concepts).VerdictOf(row);
}
