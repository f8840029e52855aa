using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>One way in to a called fact: adds its part.</summary>
internal sealed class CallRule(CallDefinition call, int slot, ConceptNames names) : EngineRule(call)
{
    /// <inheritdoc/>
    public override DerivedFact Act(RankingFacts ranking, DerivedFact[] matched)
    {
        var rows = ranking.Evaluator.Evaluate(call.Condition, new MatchedFacts(ranking.Facts, matched, names));
        ranking.Keep(slot, rows);
        return new ConceptPart(Makes!.Value.Id, rows.Within(ranking.Scope.InScope(call)));
    }
}
