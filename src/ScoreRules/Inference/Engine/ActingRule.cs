using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>A statement that acts on movements: finds where its condition holds.</summary>
internal sealed class ActingRule(ConditionalStatement statement, int slot, ConceptNames names) : EngineRule(statement)
{
    /// <inheritdoc/>
    public override DerivedFact? Act(RankingFacts ranking, DerivedFact[] matched)
    {
        ranking.Keep(slot, ranking.Evaluator.Evaluate(statement.Condition, new MatchedFacts(ranking.Facts, matched, names)));
        return null;
    }
}
