using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>What a ruleset found in a table of facts: one bit a row for each statement and called fact, read back on demand.</summary>
public sealed class InferenceResult : IFactSource
{
    private readonly Dictionary<BoundStatement, RuleOutcome> byStatement;
    private readonly Dictionary<string, ThreeValuedSet> concepts;
    private readonly ILookup<string, CallDefinition> calls;

    /// <summary>Keeps what was found.</summary>
    internal InferenceResult(FactTable facts, ImmutableArray<RuleOutcome> outcomes, Dictionary<string, ThreeValuedSet> concepts, ConditionEvaluator evaluator)
    {
        Facts = facts;
        Outcomes = outcomes;
        Evaluator = evaluator;
        this.concepts = concepts;
        calls = outcomes.Select(outcome => outcome.Statement).OfType<CallDefinition>().ToLookup(call => NameText.Key(call.Fact), StringComparer.Ordinal);

        // By reference: two statements may say the same, and each is still one of its own.
        byStatement = outcomes.ToDictionary(outcome => outcome.Statement, (IEqualityComparer<BoundStatement>)ReferenceEqualityComparer.Instance);
    }

    /// <summary>The table, with the numbers that recipes worked out.</summary>
    public FactTable Facts { get; }

    /// <summary>
    /// What became of each statement: calls, points, reasons that cancel out, limits, exclusions, cautions, refusals, each
    /// kind in the order of the house.
    /// </summary>
    public ImmutableArray<RuleOutcome> Outcomes { get; }

    /// <summary>How often a rule of the engine fired: once for each statement and recipe, and once for each called fact.</summary>
    public int Firings { get; internal init; }

    /// <summary>Answers conditions over <see cref="Facts"/>.</summary>
    internal ConditionEvaluator Evaluator { get; }

    /// <summary>What became of a statement of the ruleset.</summary>
    /// <exception cref="ArgumentException">It is none of the ruleset that was applied.</exception>
    public RuleOutcome Outcome(BoundStatement statement) =>
        byStatement.GetValueOrDefault(statement) ?? throw new ArgumentException($"{statement.Info.Title} is not a rule of this ruleset.", nameof(statement));

    /// <summary>Where a called fact holds; nowhere when no statement makes it.</summary>
    public ThreeValuedSet Concept(string name) => concepts.GetValueOrDefault(NameText.Key(name)) ?? ThreeValuedSet.Nowhere(Facts.RowCount);

    /// <summary>The answer of a condition for one row, be it one that stands in no rule, such as a profile's.</summary>
    public Verdict VerdictOf(Condition condition, int row) => Evaluator.Evaluate(condition, this).VerdictOf(row);

    /// <summary>The statements that make a called fact, in the order of the house.</summary>
    public IEnumerable<CallDefinition> CallsOf(string fact) => calls[NameText.Key(fact)];
}
