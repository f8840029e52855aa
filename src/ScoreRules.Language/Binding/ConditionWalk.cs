using ScoreRules.Language.Binding.Building;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Walks through conditions.</summary>
public static class ConditionWalk
{
    /// <summary>All tests of a condition, in source order.</summary>
    public static IEnumerable<Condition> Tests(Condition condition) => condition switch
    {
        AllOf all => all.Parts.SelectMany(Tests),
        AnyOf any => any.Parts.SelectMany(Tests),
        Unless unless => Tests(unless.Part),
        Everything => [],
        _ => [condition],
    };

    /// <summary>Whether a condition asks who somebody is, and so protects people.</summary>
    public static bool AsksWho(Condition condition) => Tests(condition).OfType<AttributeTest>().Any(test => test.Attribute.IsAboutThePerson);

    /// <summary>Keys of the called facts and recipes that a condition rests on.</summary>
    internal static IEnumerable<string> Names(Condition condition) => Tests(condition).Select(test => test switch
    {
        CalledTest called => NameText.Key(called.Fact),
        AttributeTest { Attribute.IsWorkedOut: true } worked => Strata.KeyOf(worked.Attribute),
        _ => null,
    }).OfType<string>();
}
