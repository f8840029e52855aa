using System.Collections.Immutable;
using NRules.RuleModel;
using ScoreRules.Catalogue;
using ScoreRules.Inference.Facts;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>
/// One run, itself the first fact in working memory. The actions of the rules evaluate a statement for all rows, keep the
/// result here and insert what others wait for.
/// </summary>
internal sealed class Workspace
{
    private readonly ConditionEvaluator evaluator;
    private readonly RuleScope scope;
    private readonly RowSet none;

    /// <summary>Prepares a run.</summary>
    /// <param name="keys">What the conditions of the house ask for.</param>
    /// <param name="facts">The facts; worked-out columns are added to them.</param>
    public Workspace(ConditionKeys keys, FactTable facts)
    {
        Facts = facts;
        evaluator = new ConditionEvaluator(keys, facts, Concepts);
        scope = new RuleScope(facts);
        none = RowSet.None(facts.RowCount);
    }

    /// <summary>The facts, worked-out columns included.</summary>
    public FactTable Facts { get; }

    /// <summary>Results by statement.</summary>
    public Dictionary<BoundStatement, RuleOutcome> Outcomes { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>Complete called facts by name key.</summary>
    public Dictionary<string, ThreeValuedSet> Concepts { get; } = new(StringComparer.Ordinal);

    /// <summary>How many rules fired.</summary>
    public int Firings { get; private set; }

    /// <summary>A rule of the author fires.</summary>
    public void FireRule(ConditionalStatement rule)
    {
        Firings++;
        Keep(rule, rule.Condition, rule is ExclusionDefinition exclusion ? exclusion.Movements : []);
    }

    /// <summary>A statement that calls a fact fires: its part goes to working memory.</summary>
    public void FireCall(IContext context, CallDefinition call)
    {
        Firings++;
        var outcome = Keep(call, call.Condition, []);
        var part = outcome.CouldNotTell.IsEmpty
            ? ThreeValuedSet.Exactly(outcome.Effective)
            : new ThreeValuedSet(outcome.Effective, outcome.Effective.Or(outcome.CouldNotTell));
        context.InsertLinked("part", new ConceptPart(call, part));
    }

    /// <summary>All parts of a called fact are in: their union is the fact.</summary>
    public void Unite(IContext context, string key)
    {
        Firings++;
        var union = context.Match.Facts.Select(fact => fact.Value).OfType<ConceptPart>().Select(part => part.Rows).Aggregate((left, right) => left.Or(right));
        Concepts[key] = union;
        context.InsertLinked("concept", new Concept(key));
    }

    /// <summary>A recipe fires: its column goes to the fact table.</summary>
    public void FireRecipe(IContext context, RecipeDefinition recipe)
    {
        Firings++;
        Facts.SetWorkedOut(recipe.Result, RecipeKernel.Evaluate(recipe, Facts, evaluator.Evaluate));
        context.InsertLinked("column", new WorkedOut(recipe.Result.Index));
    }

    private RuleOutcome Keep(BoundStatement statement, Condition asked, ImmutableArray<string> movements)
    {
        var condition = evaluator.Evaluate(asked);
        var (inScope, excepted) = scope.Of(statement.Info, movements);
        var outcome = new RuleOutcome(
            statement,
            condition,
            inScope,
            excepted.IsEmpty ? none : condition.Certain.And(excepted),
            none,
            scope.IsEverything(inScope) ? condition.Certain : condition.Certain.And(inScope),
            condition.IsExact ? none : condition.CouldNotTell.And(inScope));
        Outcomes[statement] = outcome;
        return outcome;
    }
}
