using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>Completes a called fact when all its parts are in. A row that came in by several ways counts once.</summary>
/// <param name="first">The first statement that makes the fact.</param>
internal sealed class UnionRule(CallDefinition first) : EngineRule(first)
{
    /// <inheritdoc/>
    public override DerivedFact Act(RankingFacts ranking, DerivedFact[] matched) =>
        new Concept(Makes!.Value.Id, matched.Cast<ConceptPart>().Select(part => part.Rows).Aggregate((left, right) => left.Or(right)));
}
