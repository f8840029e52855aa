using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference.Engine;

/// <summary>Numbers the called facts of a ruleset.</summary>
internal sealed class ConceptNames
{
    private readonly Dictionary<string, int> ids = new(StringComparer.Ordinal);

    /// <summary>Numbers what calls make and what conditions ask for, be it that no statement makes it.</summary>
    public ConceptNames(IEnumerable<CallDefinition> calls, IEnumerable<Condition> conditions)
    {
        foreach (var name in calls.Select(call => call.Fact).Concat(conditions.SelectMany(ConditionWalk.Tests).OfType<CalledTest>().Select(test => test.Fact)))
        {
            ids.TryAdd(NameText.Key(name), ids.Count);
        }
    }

    /// <summary>Number of called facts.</summary>
    public int Count => ids.Count;

    /// <summary>Names, as they are looked up, with their numbers.</summary>
    public IEnumerable<KeyValuePair<string, int>> All => ids;

    /// <summary>The number of a called fact that was numbered.</summary>
    public int IdOf(string name) => ids[NameText.Key(name)];
}
