using System.Collections.Immutable;
using CsCheck;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tests.Inference;

/// <summary>Random conditions over a vocabulary. A condition of a level asks only for called facts and recipes of lower levels, so that no circle arises.</summary>
internal static class ConditionGen
{
    /// <summary>Numbers that meet, differ by less than a billionth, or by little more.</summary>
    public static readonly Gen<double> Number = Pick(0.0, 0.3, 0.1 + 0.2, 0.3000000004, 0.300000002, 1 / 3.0, 1, 2, 3, 4, -1, 1e-10, 60, 85);

    private static readonly Comparison[] ForNumbers =
    [
        Comparison.Is, Comparison.OtherThan, Comparison.AtLeast, Comparison.AtMost, Comparison.MoreThan, Comparison.LessThan, Comparison.Between, Comparison.Known, Comparison.Unknown,
    ];

    private static readonly Comparison[] ForOneWord =
        [Comparison.Is, Comparison.OtherThan, Comparison.OneOf, Comparison.NoneOf, Comparison.Known, Comparison.Unknown];

    private static readonly Comparison[] ForLists = [Comparison.HasAny, Comparison.HasAll, Comparison.HasNone, Comparison.Known, Comparison.Unknown];

    /// <summary>One of these.</summary>
    public static Gen<T> Pick<T>(params T[] items) => Gen.Int[0, items.Length - 1].Select(position => items[position]);

    /// <summary>Codes of some of so many words, rising.</summary>
    public static Gen<ImmutableArray<int>> Codes(int count) => Gen.Bool.Array[count].Select(chosen => Enumerable.Range(0, count).Where(code => chosen[code]).ToImmutableArray());

    /// <summary>A condition that may nest so deep.</summary>
    public static Gen<Condition> Of(List<AttributeDefinition> given, List<AttributeDefinition> workedOut, int level, int depth)
    {
        var attributes = given.Concat(workedOut.Take(level)).Select(Test).ToArray();
        var atom = Gen.Frequency((6, Gen.OneOf(attributes)), (3, Called(level)), (1, Gen.Const<Condition>(Ask.Always())));
        if (depth == 0)
        {
            return atom;
        }

        var part = Of(given, workedOut, level, depth - 1);
        return Gen.Frequency(
            (2, atom),
            (2, part.Array[0, 3].Select(parts => (Condition)Ask.All(parts))),
            (2, part.Array[0, 3].Select(parts => (Condition)Ask.Any(parts))),
            (1, part.Select(inner => (Condition)Ask.Unless(inner))));
    }

    // One in four asks for a fact that no statement makes.
    private static Gen<Condition> Called(int level) => Gen.Frequency(
        (level == 0 ? 0 : 3, Gen.Int[0, Math.Max(0, level - 1)].Select(lower => (Condition)Ask.Called($"FACT {lower}"))),
        (1, Gen.Const<Condition>(Ask.Called("nobody's fact"))));

    private static Gen<Condition> Test(AttributeDefinition attribute) => attribute.IsWord
        ? Gen.Select(Pick(attribute.Kind == AttributeKind.OneOf ? ForOneWord : ForLists), Codes(attribute.Values.Length), (comparison, codes) =>
            (Condition)new AttributeTest(attribute, comparison, double.NaN, double.NaN, codes, Ask.Here))
        : Gen.Select(Pick(ForNumbers), Number, Number, (comparison, number, high) => (Condition)attribute.That(comparison, number, high));
}
