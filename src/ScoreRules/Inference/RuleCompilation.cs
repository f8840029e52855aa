using System.Linq.Expressions;
using NRules;
using NRules.Extensibility;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using ScoreRules.Catalogue;
using ScoreRules.Inference.Facts;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>
/// Turns each statement of the author into one NRules rule. Its patterns are the fact table and the called facts and
/// worked-out columns it names; so it fires once, and not before everything it rests on is complete.
/// </summary>
internal sealed class RuleCompilation(Workspace workspace)
{
    private readonly List<IRuleDefinition> rules = [];
    private readonly HashSet<string> made = new(StringComparer.Ordinal);
    private readonly HashSet<int> workedOut = [];

    /// <summary>All rules of a house, ready to run.</summary>
    public ISessionFactory Compile(BoundRuleset ruleset)
    {
        made.UnionWith(ruleset.Calls.Select(call => NameText.Key(call.Fact)));
        workedOut.UnionWith(ruleset.Recipes.Select(recipe => recipe.Result.Index));
        foreach (var recipe in ruleset.Recipes.DistinctBy(recipe => recipe.Result.Index))
        {
            Add(recipe, $"work out {recipe.Result.Name}", recipe.Stratum, Names(recipe), context => workspace.FireRecipe(context, recipe));
        }

        foreach (var call in ruleset.Calls)
        {
            Add(call, call.Info.Title, call.Stratum, Names(call.Condition), context => workspace.FireCall(context, call));
        }

        foreach (var concept in ruleset.Calls.GroupBy(call => NameText.Key(call.Fact), StringComparer.Ordinal))
        {
            AddUnion(concept.Key, [.. concept]);
        }

        foreach (var rule in InferenceEngine.Rules(ruleset))
        {
            Add(rule, rule.Info.Title, LastStratum(ruleset), Names(rule.Condition), context => workspace.FireRule(context, rule));
        }

        return new RuleCompiler { ExpressionCompiler = new Interpreted() }.Compile(rules);
    }

    private static int LastStratum(BoundRuleset ruleset) =>
        1 + ruleset.Calls.Select(call => call.Stratum).Concat(ruleset.Recipes.Select(recipe => recipe.Stratum)).DefaultIfEmpty(0).Max();

    private static (IEnumerable<string> Concepts, IEnumerable<int> Columns) Names(RecipeDefinition recipe)
    {
        var tested = recipe.Steps.Select(step => step.Condition).OfType<Condition>().Select(Names).ToList();
        var read = recipe.Steps.Select(step => step.Attribute).OfType<AttributeDefinition>().Select(attribute => attribute.Index);
        return (tested.SelectMany(names => names.Concepts), tested.SelectMany(names => names.Columns).Concat(read));
    }

    private static (IEnumerable<string> Concepts, IEnumerable<int> Columns) Names(Condition condition)
    {
        var tests = ConditionWalk.Tests(condition).ToList();
        return (
            tests.OfType<CalledTest>().Select(test => NameText.Key(test.Fact)),
            tests.OfType<AttributeTest>().Select(test => test.Attribute).Select(attribute => attribute.Index));
    }

    // What nothing makes is not waited for: a called fact without a statement holds nowhere, likeness is in the table from the start.
    private void Add(BoundStatement statement, string name, int stratum, (IEnumerable<string> Concepts, IEnumerable<int> Columns) needs, Action<IContext> fire)
    {
        var builder = new RuleBuilder();
        builder.Name($"{name} ({statement.Info.Location})");
        builder.Priority(-stratum);
        builder.Property("Statement", statement);
        var left = builder.LeftHandSide();
        left.Pattern(typeof(FactTable), "table");
        foreach (var (key, index) in needs.Concepts.Where(made.Contains).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).Select((key, index) => (key, index)))
        {
            var concept = Expression.Parameter(typeof(Concept), $"concept{index}");
            left.Pattern(typeof(Concept), concept.Name!).Condition(Expression.Lambda(Expression.Equal(Expression.Property(concept, nameof(Concept.Key)), Expression.Constant(key)), concept));
        }

        foreach (var (attribute, index) in needs.Columns.Where(workedOut.Contains).Distinct().Order().Select((attribute, index) => (attribute, index)))
        {
            var column = Expression.Parameter(typeof(WorkedOut), $"column{index}");
            left.Pattern(typeof(WorkedOut), column.Name!).Condition(Expression.Lambda(Expression.Equal(Expression.Property(column, nameof(WorkedOut.Attribute)), Expression.Constant(attribute)), column));
        }

        Finish(builder, fire);
    }

    private void AddUnion(string key, List<CallDefinition> calls)
    {
        var builder = new RuleBuilder();
        builder.Name($"all that makes \"{key}\"");
        builder.Priority(-calls.Max(call => call.Stratum));
        var left = builder.LeftHandSide();
        for (var i = 0; i < calls.Count; i++)
        {
            var part = Expression.Parameter(typeof(ConceptPart), $"part{i}");
            left.Pattern(typeof(ConceptPart), part.Name!).Condition(Expression.Lambda(Expression.ReferenceEqual(Expression.Property(part, nameof(ConceptPart.Call)), Expression.Constant(calls[i])), part));
        }

        Finish(builder, context => workspace.Unite(context, key));
    }

    private void Finish(RuleBuilder builder, Action<IContext> fire)
    {
        var context = Expression.Parameter(typeof(IContext), "context");
        builder.RightHandSide().Action(Expression.Lambda(Expression.Invoke(Expression.Constant(fire), context), context));
        rules.Add(builder.Build());
    }

    // Work for each row sits in our kernels, so expressions run a few times in all: interpreting them saves most of the compile time.
    private sealed class Interpreted : IExpressionCompiler
    {
        public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
            where TDelegate : Delegate => expression.Compile(preferInterpretation: true);
    }
}
