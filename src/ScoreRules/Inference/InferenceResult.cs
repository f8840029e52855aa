using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>What the rules found.</summary>
public sealed class InferenceResult
{
    private readonly IReadOnlyDictionary<BoundStatement, RuleOutcome> outcomes;
    private readonly IReadOnlyDictionary<string, ThreeValuedSet> concepts;

    internal InferenceResult(FactTable facts, IReadOnlyDictionary<BoundStatement, RuleOutcome> outcomes, IReadOnlyDictionary<string, ThreeValuedSet> concepts, int firings)
    {
        Facts = facts;
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

    /// <summary>Where a called fact holds; nowhere when nothing makes it.</summary>
    public ThreeValuedSet Concept(string name) => concepts.GetValueOrDefault(NameText.Key(name)) ?? ThreeValuedSet.None(Facts.RowCount);
}
