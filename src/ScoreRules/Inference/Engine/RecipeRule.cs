using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>Works numbers out.</summary>
internal sealed class RecipeRule(RecipeDefinition recipe, ConceptNames names) : EngineRule(recipe)
{
    /// <inheritdoc/>
    public override DerivedFact Act(RankingFacts ranking, DerivedFact[] matched)
    {
        var source = new MatchedFacts(ranking.Facts, matched, names);
        return new WorkedOut(recipe.Result, RecipeKernel.Run(recipe, source, ranking.Evaluator, ranking.Scope.InScope(recipe)));
    }
}
