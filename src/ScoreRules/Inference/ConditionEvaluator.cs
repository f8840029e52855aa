using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Evaluates conditions for all rows at once. Equal comparisons of different rules are answered once.</summary>
/// <param name="keys">What the conditions of the house ask for.</param>
/// <param name="facts">The facts.</param>
/// <param name="concepts">Called facts by name key. Those that a condition rests on must be complete when it is evaluated.</param>
internal sealed class ConditionEvaluator(ConditionKeys keys, FactTable facts, IReadOnlyDictionary<string, ThreeValuedSet> concepts)
{
    private readonly ThreeValuedSet?[] atoms = new ThreeValuedSet?[keys.AtomCount];

    /// <summary>The answer for all rows.</summary>
    public ThreeValuedSet Evaluate(Condition condition) => condition switch
    {
        AllOf all => All(all.Parts),
        AnyOf any => Any(any.Parts),
        Unless unless => Evaluate(unless.Part).Not(),
        CalledTest called => concepts.GetValueOrDefault(keys.KeyOf(called)) ?? ThreeValuedSet.None(facts.RowCount),
        AttributeTest test => atoms[keys.AtomOf(test)] ??= AttributeKernel.Evaluate(test, facts),
        _ => ThreeValuedSet.All(facts.RowCount),
    };

    private ThreeValuedSet All(ImmutableArray<Condition> parts)
    {
        var joined = Evaluate(parts[0]);
        for (var i = 1; i < parts.Length; i++)
        {
            joined = joined.And(Evaluate(parts[i]));
        }

        return joined;
    }

    private ThreeValuedSet Any(ImmutableArray<Condition> parts)
    {
        var joined = Evaluate(parts[0]);
        for (var i = 1; i < parts.Length; i++)
        {
            joined = joined.Or(Evaluate(parts[i]));
        }

        return joined;
    }
}
