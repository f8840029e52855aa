using System.Linq.Expressions;
using System.Reflection;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace ScoreRules.Inference.Engine;

/// <summary>Translates a rule into one of NRules: patterns for what it waits for, one action that acts for all rows.</summary>
internal static class RuleTranslation
{
    /// <summary>Property of the NRules rule that holds the author's statement, so that engine events speak of it.</summary>
    public const string StatementProperty = "Statement";

    private static readonly MethodInfo ActAndInsert = typeof(RuleTranslation).GetMethod(nameof(Fire), BindingFlags.NonPublic | BindingFlags.Static)!;

    /// <summary>The rule as NRules runs it.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="name">A name that no other rule has.</param>
    public static IRuleDefinition Translate(EngineRule rule, string name)
    {
        var builder = new RuleBuilder();
        builder.Name(name);
        builder.Priority(rule.Priority);
        builder.Property(StatementProperty, rule.Statement);
        var ranking = Expression.Parameter(typeof(RankingFacts), "ranking");
        builder.LeftHandSide().Pattern(ranking.Type, ranking.Name!);
        var needed = rule.Needs.Select((need, position) => Wait(builder, need, FormattableString.Invariant($"fact{position}"))).ToArray();
        builder.RightHandSide().Action(Action(rule, ranking, needed));
        return builder.Build();
    }

    private static ParameterExpression Wait(RuleBuilder builder, Antecedent need, string name)
    {
        var fact = Expression.Parameter(need.Kind, name);
        var isTheOne = Expression.Equal(Expression.Property(fact, nameof(DerivedFact.Id)), Expression.Constant(need.Id));
        builder.LeftHandSide().Pattern(fact.Type, name).Condition(Expression.Lambda(isTheOne, fact));
        return fact;
    }

    private static LambdaExpression Action(EngineRule rule, ParameterExpression ranking, ParameterExpression[] needed)
    {
        var context = Expression.Parameter(typeof(IContext), "context");
        var matched = Expression.NewArrayInit(typeof(DerivedFact), needed);
        return Expression.Lambda(Expression.Call(ActAndInsert, context, Expression.Constant(rule), ranking, matched), [context, ranking, .. needed]);
    }

    // What a rule makes is linked to its firing, so that the engine itself knows which rule derived it from which facts.
    private static void Fire(IContext context, EngineRule rule, RankingFacts ranking, DerivedFact[] matched)
    {
        if (rule.Act(ranking, matched) is { } made)
        {
            context.InsertLinked(nameof(EngineRule.Makes), made);
        }
    }
}
