using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>Evaluates conditions for all rows at once. Equal comparisons of different rules are answered once.</summary>
internal sealed class ConditionEvaluator(FactTable facts)
{
    private readonly Dictionary<string, ThreeValuedSet> atoms = new(StringComparer.Ordinal);

    /// <summary>The answer for all rows.</summary>
    /// <param name="condition">The condition.</param>
    /// <param name="concepts">The called facts that it rests on, by name key; all complete.</param>
    public ThreeValuedSet Evaluate(Condition condition, IReadOnlyDictionary<string, ThreeValuedSet> concepts) => condition switch
    {
        AllOf all => all.Parts.Select(part => Evaluate(part, concepts)).Aggregate(ThreeValuedSet.All(facts.RowCount), (left, right) => left.And(right)),
        AnyOf any => any.Parts.Select(part => Evaluate(part, concepts)).Aggregate(ThreeValuedSet.None(facts.RowCount), (left, right) => left.Or(right)),
        Unless unless => Evaluate(unless.Part, concepts).Not(),
        CalledTest called => concepts.GetValueOrDefault(NameText.Key(called.Fact)) ?? ThreeValuedSet.None(facts.RowCount),
        AttributeTest test => Atom(test),
        Everything => ThreeValuedSet.All(facts.RowCount),
        _ => throw new NotSupportedException($"a condition of the kind {condition.GetType().Name} is not known"),
    };

    private ThreeValuedSet Atom(AttributeTest test)
    {
        var key = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{test.Attribute.Index} {test.Comparison} {test.Number:R} {test.High:R} {string.Join(',', test.Codes)}");
        if (!atoms.TryGetValue(key, out var answer))
        {
            atoms[key] = answer = AttributeKernel.Evaluate(test, facts);
        }

        return answer;
    }
}
