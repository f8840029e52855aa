using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>
/// Answers conditions for all rows at once. Each distinct test is answered once and kept, so an evaluator belongs to one
/// table of facts.
/// </summary>
internal sealed class ConditionEvaluator
{
    private readonly Dictionary<AtomKey, ThreeValuedSet> answered = [];

    /// <summary>Number of distinct tests answered so far.</summary>
    public int TestCount => answered.Count;

    /// <summary>The rows where a condition holds, does not hold or cannot be told.</summary>
    public ThreeValuedSet Evaluate(Condition condition, IFactSource source) => condition switch
    {
        AttributeTest test => Test(test, source),
        CalledTest called => source.Concept(called.Fact),
        AllOf { Parts.IsEmpty: false } all => all.Parts.Select(part => Evaluate(part, source)).Aggregate((rows, part) => rows.And(part)),
        AnyOf { Parts.IsEmpty: false } any => any.Parts.Select(part => Evaluate(part, source)).Aggregate((rows, part) => rows.Or(part)),
        AllOf => Everywhere(source),
        AnyOf => Everywhere(source).Not(),
        Unless unless => Evaluate(unless.Part, source).Not(),
        Everything => Everywhere(source),
        _ => throw new InvalidOperationException($"A condition of the kind {condition.GetType().Name} cannot be answered."),
    };

    private static ThreeValuedSet Everywhere(IFactSource source) => ThreeValuedSet.Decided(source.Facts.All);

    private ThreeValuedSet Test(AttributeTest test, IFactSource source)
    {
        var key = AtomKey.Of(test);
        if (!answered.TryGetValue(key, out var rows))
        {
            answered[key] = rows = AttributeKernel.Test(source.Facts, test);
        }

        return rows;
    }
}
