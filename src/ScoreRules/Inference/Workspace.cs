using System.Collections.Immutable;
using NRules.RuleModel;
using ScoreRules.Catalogue;
using ScoreRules.Inference.Facts;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>What the actions of the rules do: evaluate the statement for all rows, keep the result, insert what others wait for.</summary>
internal sealed class Workspace(FactTable facts, ImmutableArray<TargetDefinition> targets)
{
    private readonly ConditionEvaluator evaluator = new(facts);
    private readonly RuleScope scope = new(facts.Rows, targets);

    /// <summary>Results by statement.</summary>
    public Dictionary<BoundStatement, RuleOutcome> Outcomes { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>Complete called facts by name key.</summary>
    public Dictionary<string, ThreeValuedSet> Concepts { get; } = new(StringComparer.Ordinal);

    /// <summary>How many rules fired.</summary>
    public int Firings { get; private set; }

    /// <summary>A rule of the author fires.</summary>
    public void FireRule(IContext context, ConditionalStatement rule)
    {
        var movements = rule is ExclusionDefinition exclusion ? exclusion.Movements : [];
        Guarded(rule.Info, () => Keep(rule, evaluator.Evaluate(rule.Condition, Matched(context)), rule.Info, movements));
    }

    /// <summary>A statement that calls a fact fires: its part goes to working memory.</summary>
    public void FireCall(IContext context, CallDefinition call)
    {
        var outcome = Guarded(call.Info, () => Keep(call, evaluator.Evaluate(call.Condition, Matched(context)), call.Info, []));
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
        var concepts = Matched(context);
        var column = Guarded(recipe.Info, () => RecipeKernel.Evaluate(recipe, facts, condition => evaluator.Evaluate(condition, concepts)));
        foreach (var row in scope.Of(recipe.Info, []).InScope.Complement())
        {
            column[row] = double.NaN;
        }

        facts.SetWorkedOut(recipe.Result, column);
        context.InsertLinked("column", new WorkedOut(recipe.Result.Index));
    }

    // Bound rules cannot fail; if one does all the same, the message names the author's rule.
    private T Guarded<T>(StatementInfo info, Func<T> fire)
    {
        Firings++;
        try
        {
            return fire();
        }
        catch (Exception exception) when (exception is not InferenceException)
        {
            throw InferenceException.InRule(info, exception);
        }
    }

    private static Dictionary<string, ThreeValuedSet> Matched(IContext context) =>
        context.Match.Facts.Select(fact => fact.Value).OfType<Concept>().ToDictionary(concept => concept.Key, concept => concept.Rows, StringComparer.Ordinal);

    private RuleOutcome Keep(BoundStatement statement, ThreeValuedSet condition, StatementInfo info, ImmutableArray<string> movements)
    {
        var (inScope, excepted) = scope.Of(info, movements);
        var outcome = new RuleOutcome(
            statement, condition, inScope, condition.Certain.And(excepted), RowSet.None(facts.RowCount), condition.Certain.And(inScope), condition.CouldNotTell.And(inScope));
        Outcomes[statement] = outcome;
        return outcome;
    }
}
