using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>The author's statements as rules of the engine: one each, and one that completes each called fact.</summary>
internal sealed class RuleList
{
    private readonly BoundRuleset ruleset;
    private readonly HashSet<int> workedOut;

    /// <summary>Makes the rules of a ruleset.</summary>
    public RuleList(BoundRuleset ruleset)
    {
        this.ruleset = ruleset;
        workedOut = [.. ruleset.Recipes.Select(recipe => recipe.Result.Index)];
        Acting =
        [
            .. ruleset.Awards, .. ruleset.CancelOuts, .. ruleset.Limits, .. ruleset.Exclusions, .. ruleset.Cautions, .. ruleset.Refusals,
        ];
        Names = new ConceptNames(ruleset.Calls, AllConditions());
        Rules = [.. Calls(), .. Unions(), .. Recipes(), .. ActingRules()];
        CircleGuard.Check(Rules);
    }

    /// <summary>Numbers of the called facts.</summary>
    public ConceptNames Names { get; }

    /// <summary>Statements that act on movements.</summary>
    public ImmutableArray<ConditionalStatement> Acting { get; }

    /// <summary>Calls, then statements that act: the order of their slots.</summary>
    public IEnumerable<BoundStatement> Kept => ruleset.Calls.Concat<BoundStatement>(Acting);

    /// <summary>Number of statements that keep an answer.</summary>
    public int SlotCount => ruleset.Calls.Length + Acting.Length;

    /// <summary>The rules.</summary>
    public ImmutableArray<EngineRule> Rules { get; }

    /// <summary>Numbers of called facts that are asked for though no statement makes them: they never happen.</summary>
    public IEnumerable<int> NeverHappening => Enumerable.Range(0, Names.Count).Except(ruleset.Calls.Select(call => Names.IdOf(call.Fact)));

    private IEnumerable<Condition> AllConditions() =>
        ruleset.Calls.Select(call => call.Condition)
            .Concat(Acting.Select(statement => statement.Condition))
            .Concat(ruleset.Recipes.SelectMany(recipe => recipe.Steps).Select(step => step.Condition).OfType<Condition>());

    private IEnumerable<EngineRule> Calls() => ruleset.Calls.Select((call, slot) => new CallRule(call, slot, Names)
    {
        Priority = -call.Stratum,
        Needs = NeedsOf([call.Condition], []),
        Makes = Antecedent.Part(slot),
    });

    private IEnumerable<EngineRule> Unions() => ruleset.Calls.Select((call, slot) => (Call: call, Slot: slot))
        .GroupBy(way => Names.IdOf(way.Call.Fact))
        .Select(ways => new UnionRule(ways.First().Call)
        {
            Priority = -ways.Max(way => way.Call.Stratum),
            Needs = [.. ways.Select(way => Antecedent.Part(way.Slot))],
            Makes = Antecedent.Called(ways.Key),
        });

    private IEnumerable<EngineRule> Recipes()
    {
        var twice = ruleset.Recipes.GroupBy(recipe => recipe.Result.Index).FirstOrDefault(recipes => recipes.Count() > 1);
        return twice is null
            ? ruleset.Recipes.Select(recipe => new RecipeRule(recipe, Names)
            {
                Priority = -recipe.Stratum,
                Needs = NeedsOf(recipe.Steps.Select(step => step.Condition).OfType<Condition>(), recipe.Steps.Select(step => step.Attribute).OfType<AttributeDefinition>()),
                Makes = Antecedent.Numbers(recipe.Result.Index),
            })
            : throw new InferenceException($"\"{twice.First().Result.Name}\" is worked out by two recipes: {string.Join(" and ", twice.Select(recipe => InferenceException.NameOf(recipe.Info)))}.");
    }

    private IEnumerable<EngineRule> ActingRules()
    {
        var last = -1 - ruleset.Calls.Select(call => call.Stratum).Concat(ruleset.Recipes.Select(recipe => recipe.Stratum)).DefaultIfEmpty(-1).Max();
        return Acting.Select((statement, position) => new ActingRule(statement, ruleset.Calls.Length + position, Names)
        {
            Priority = last,
            Needs = NeedsOf([statement.Condition], []),
        });
    }

    private ImmutableArray<Antecedent> NeedsOf(IEnumerable<Condition> conditions, IEnumerable<AttributeDefinition> read)
    {
        var tests = conditions.SelectMany(ConditionWalk.Tests).ToList();
        var called = tests.OfType<CalledTest>().Select(test => Antecedent.Called(Names.IdOf(test.Fact)));
        var numbers = tests.OfType<AttributeTest>().Select(test => test.Attribute).Concat(read).Where(attribute => workedOut.Contains(attribute.Index)).Select(attribute => Antecedent.Numbers(attribute.Index));
        return [.. called.Concat(numbers).Distinct().OrderBy(need => need.Kind.Name, StringComparer.Ordinal).ThenBy(need => need.Id)];
    }
}
