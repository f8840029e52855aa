using NRules.RuleModel;
using ScoreRules.Catalogue;
using ScoreRules.Inference.Facts;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>What the actions of the rules do: evaluate the statement for all rows, keep the result, insert what others wait for.</summary>
internal sealed class Workspace(FactTable facts)
{
    private readonly ConditionEvaluator evaluator = new(facts);
    private readonly RuleScope scope = new(facts.Rows);

    /// <summary>Results by statement.</summary>
    public Dictionary<BoundStatement, RuleOutcome> Outcomes { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>Complete called facts by name key.</summary>
    public Dictionary<string, ThreeValuedSet> Concepts { get; } = new(StringComparer.Ordinal);

    /// <summary>How many rules fired.</summary>
    public int Firings { get; private set; }

    /// <summary>A rule of the author fires.</summary>
    public void FireRule(IContext context, ConditionalStatement rule)
    {
        Firings++;
        var movements = rule is ExclusionDefinition exclusion ? exclusion.Movements : [];
        Keep(rule, evaluator.Evaluate(rule.Condition, Matched(context)), rule.Info, movements);
    }

    /// <summary>A statement that calls a fact fires: its part goes to working memory.</summary>
    public void FireCall(IContext context, CallDefinition call)
    {
        Firings++;
        var outcome = Keep(call, evaluator.Evaluate(call.Condition, Matched(context)), call.Info, []);
        var part = new ThreeValuedSet(outcome.Effective, outcome.Effective.Or(outcome.CouldNotTell));
        context.InsertLinked("part", new ConceptPart(call, part));
    }

    /// <summary>All parts of a called fact are in: their union is the fact.</summary>
    public void Unite(IContext context, string key)
    {
        Firings++;
        var union = context.Match.Facts.Select(fact => fact.Value).OfType<ConceptPart>().Select(part => part.Rows).Aggregate((left, right) => left.Or(right));
        Concepts[key] = union;
        context.InsertLinked("concept", new Concept(key, union));
    }

    /// <summary>A recipe fires: its column goes to the fact table.</summary>
    public void FireRecipe(IContext context, RecipeDefinition recipe)
    {
        Firings++;
        var concepts = Matched(context);
        facts.SetWorkedOut(recipe.Result, RecipeKernel.Evaluate(recipe, facts, condition => evaluator.Evaluate(condition, concepts)));
        context.InsertLinked("column", new WorkedOut(recipe.Result.Index));
    }

    private static Dictionary<string, ThreeValuedSet> Matched(IContext context) =>
        context.Match.Facts.Select(fact => fact.Value).OfType<Concept>().ToDictionary(concept => concept.Key, concept => concept.Rows, StringComparer.Ordinal);

    private RuleOutcome Keep(BoundStatement statement, ThreeValuedSet condition, StatementInfo info, System.Collections.Immutable.ImmutableArray<string> movements)
    {
        var (inScope, excepted) = scope.Of(info, movements);
        var outcome = new RuleOutcome(
            statement, condition, inScope, condition.Certain.And(excepted), RowSet.None(facts.RowCount), condition.Certain.And(inScope), condition.CouldNotTell.And(inScope));
        Outcomes[statement] = outcome;
        return outcome;
    }
}
