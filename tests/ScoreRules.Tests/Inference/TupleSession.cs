using System.Linq.Expressions;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Inference;

/// <summary>
/// The same rules in the ordinary way of a rules engine: one fact a row, one firing a row and rule, called facts as linked
/// facts that come and go as their reasons do. Slow, and only here: a third opinion beside the engine and the oracle.
/// </summary>
internal sealed class TupleSession(HouseCase house)
{
    private int names;

    /// <summary>For each statement, the rows where its condition certainly, and where it possibly, holds.</summary>
    public ILookup<(BoundStatement Statement, bool Certain), int> Run()
    {
        var rules = house.Statements.SelectMany(statement => new[] { Rule(statement, certain: true), Rule(statement, certain: false) });
        var session = new RuleCompiler().Compile(rules).CreateSession();
        session.InsertAll(house.Rows.Select(row => new RowFact(row)));
        session.Fire();
        return session.Query<Holding>().ToLookup(holding => (holding.Statement, holding.Certain), holding => holding.Row.Row.Index);
    }

    private IRuleDefinition Rule(BoundStatement statement, bool certain)
    {
        var builder = new RuleBuilder();
        builder.Name($"{statement.Info.Title} {certain} {names++}");
        builder.Priority(statement is CallDefinition call ? -call.Stratum : -1000);
        builder.LeftHandSide().Pattern(typeof(RowFact), "row");
        var called = builder.LeftHandSide().Pattern(typeof(IEnumerable<Holding>), "called");
        var aggregate = called.Aggregate();
        aggregate.Collect();
        var one = aggregate.Pattern(typeof(Holding), "one");
        one.Condition((Expression<Func<RowFact, Holding, bool>>)((row, one) => ReferenceEquals(one.Row, row) && one.IsCall));
        called.Condition((Expression<Func<RowFact, IEnumerable<Holding>, bool>>)((row, called) => Holds(statement, row, called, certain)));
        builder.RightHandSide().Action((Expression<Action<IContext, RowFact>>)((context, row) => Insert(context, new Holding(statement, row, certain))));
        return builder.Build();
    }

    // A linked fact lives while its activation does; when the collection changes and the condition still holds it stays.
    private static void Insert(IContext context, Holding holding)
    {
        if (context.GetLinked("holding") is null)
        {
            context.InsertLinked("holding", holding);
        }
    }

    private bool Holds(BoundStatement statement, RowFact row, IEnumerable<Holding> called, bool certain)
    {
        var answer = Answer(HouseCase.ConditionOf(statement), new Oracle(house, row.Row), [.. called]);
        return certain ? answer == true : answer != false;
    }

    private static bool? Answer(Condition condition, Oracle oracle, List<Holding> called)
    {
        switch (condition)
        {
            case AllOf all:
                var parts = all.Parts.Select(part => Answer(part, oracle, called)).ToList();
                return parts.Contains(false) ? false : parts.Contains(null) ? null : true;
            case AnyOf any:
                var ways = any.Parts.Select(part => Answer(part, oracle, called)).ToList();
                return ways.Contains(true) ? true : ways.Contains(null) ? null : false;
            case Unless unless:
                return !Answer(unless.Part, oracle, called);
            case CalledTest test:
                var made = called.Where(holding => NameText.Same(holding.Statement.Info.Name!, test.Fact) && oracle.IsAbout(holding.Statement)).ToList();
                return made.Exists(holding => holding.Certain) ? true : made.Count > 0 ? null : false;
            default:
                return oracle.Holds(condition);
        }
    }

    internal sealed class RowFact(PlacementRow row)
    {
        public PlacementRow Row { get; } = row;
    }

    internal sealed class Holding(BoundStatement statement, RowFact row, bool certain)
    {
        public BoundStatement Statement { get; } = statement;

        public RowFact Row { get; } = row;

        public bool Certain { get; } = certain;

        public bool IsCall => Statement is CallDefinition;
    }
}
