using ScoreRules.Catalogue;

namespace ScoreRules.Inference.Engine;

/// <summary>The fact that every rule waits for: the table of one ranking, with a slot for the answer of each statement.</summary>
/// <param name="facts">Given facts.</param>
/// <param name="slots">Number of statements that keep an answer.</param>
internal sealed class RankingFacts(FactTable facts, int slots)
{
    private readonly ThreeValuedSet?[] answers = new ThreeValuedSet?[slots];

    /// <summary>Given facts.</summary>
    public FactTable Facts { get; } = facts;

    /// <summary>Answers conditions.</summary>
    public ConditionEvaluator Evaluator { get; } = new();

    /// <summary>Finds the rows that statements are about.</summary>
    public ScopeRows Scope { get; } = new(facts);

    /// <summary>Keeps where a statement's condition holds. A second firing would put the same in the same place.</summary>
    public void Keep(int slot, ThreeValuedSet rows) => answers[slot] = rows;

    /// <summary>Where a statement's condition holds.</summary>
    public ThreeValuedSet Answer(int slot) => answers[slot] ?? throw new InferenceException("A rule has not fired.");
}
