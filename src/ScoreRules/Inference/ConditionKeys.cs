using System.Globalization;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>What conditions ask for, looked up once for all runs: equal comparisons of different rules share a number.</summary>
internal sealed class ConditionKeys
{
    private readonly Dictionary<Condition, int> atoms = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Condition, string> facts = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);

    /// <summary>Reads all conditions of a house.</summary>
    public ConditionKeys(BoundRuleset ruleset)
    {
        var conditions = ruleset.Calls.Select(call => call.Condition)
            .Concat(InferenceEngine.Rules(ruleset).Select(rule => rule.Condition))
            .Concat(ruleset.Recipes.SelectMany(recipe => recipe.Steps).Select(step => step.Condition).OfType<Condition>());
        foreach (var test in conditions.SelectMany(ConditionWalk.Tests))
        {
            Add(test);
        }
    }

    /// <summary>How many different comparisons there are.</summary>
    public int AtomCount => numbers.Count;

    /// <summary>Number of a comparison, from 0.</summary>
    public int AtomOf(AttributeTest test) => atoms[test];

    /// <summary>Name key of a called fact.</summary>
    public string KeyOf(CalledTest test) => facts[test];

    private void Add(Condition condition)
    {
        if (condition is CalledTest called)
        {
            facts[called] = NameText.Key(called.Fact);
        }
        else if (condition is AttributeTest test)
        {
            var key = string.Create(CultureInfo.InvariantCulture, $"{test.Attribute.Index} {test.Comparison} {test.Number:R} {test.High:R} {string.Join(',', test.Codes)}");
            numbers.TryAdd(key, numbers.Count);
            atoms[test] = numbers[key];
        }
    }
}
