using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds called facts and recipes, and orders them so that each comes after what it rests on.</summary>
internal sealed class CallBinder(BindContext context, InfoBinder info)
{
    private readonly ConditionBinder conditions = new(context);
    private readonly RecipeBinder recipes = new(context);

    /// <summary>Calls and recipes with their strata; those in a circle are reported and left out.</summary>
    public (ImmutableArray<CallDefinition> Calls, ImmutableArray<RecipeDefinition> Recipes) Bind(IReadOnlyList<StatementSyntax> statements)
    {
        var calls = new List<CallDefinition>();
        var made = new List<RecipeDefinition>();
        foreach (var statement in statements.Where(statement => statement.First is not null))
        {
            if (statement.Spec == RuleGrammar.Call && conditions.Bind(statement) is { } condition)
            {
                calls.Add(new CallDefinition(info.Bind(statement, statement.Head<NameSyntax>()), condition, 0));
            }
            else if (statement.Spec == RuleGrammar.WorkOut && recipes.Bind(statement, info) is { } recipe)
            {
                made.Add(recipe);
            }
        }

        var strata = new Strata(calls, made);
        strata.ReportCircles(context.Findings);
        return (
            [.. calls.Where(call => strata.Of(call.Fact) is not null).Select(call => call with { Stratum = strata.Of(call.Fact)!.Value })],
            [.. made.Where(recipe => strata.Of(Strata.KeyOf(recipe.Result)) is not null).Select(recipe => recipe with { Stratum = strata.Of(Strata.KeyOf(recipe.Result))!.Value })]);
    }
}
