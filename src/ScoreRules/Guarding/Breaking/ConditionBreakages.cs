using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Conditions with one part broken: taken out, reversed, or its number moved by a step.</summary>
internal static class ConditionBreakages
{
    /// <summary>All of them, in the order of the text.</summary>
    /// <param name="slot">The statement.</param>
    /// <param name="condition">Its condition.</param>
    /// <param name="with">The statement with another condition.</param>
    public static IEnumerable<Breakage> Of<T>(Slot<T> slot, Condition condition, Func<Condition, T> with)
        where T : BoundStatement =>
        Of(condition).Select(broken => slot.Broken(broken.Kind, with(broken.Whole)) with { Part = broken.Part.Location });

    private static IEnumerable<(BreakageKind Kind, Condition Part, Condition Whole)> Of(Condition condition) => condition switch
    {
        AllOf all => Parts(all.Parts, parts => all with { Parts = parts }),
        AnyOf any => Parts(any.Parts, parts => any with { Parts = parts }),
        Unless unless => Of(unless.Part).Select(inner => (inner.Kind, inner.Part, (Condition)(unless with { Part = inner.Whole }))),
        Everything => [],
        AttributeTest { Codes.IsEmpty: true, Number: var number } test when double.IsFinite(number) => [Reversed(test), .. Moved(test)],
        _ => [Reversed(condition)],
    };

    private static IEnumerable<(BreakageKind Kind, Condition Part, Condition Whole)> Parts(ImmutableArray<Condition> parts, Func<ImmutableArray<Condition>, Condition> with)
    {
        for (var i = 0; i < parts.Length; i++)
        {
            var position = i;
            if (parts.Length > 1)
            {
                yield return (BreakageKind.PartDeleted, parts[i], with(parts.RemoveAt(i)));
            }

            foreach (var (kind, part, whole) in Of(parts[i]))
            {
                yield return (kind, part, with(parts.SetItem(position, whole)));
            }
        }
    }

    private static (BreakageKind Kind, Condition Part, Condition Whole) Reversed(Condition test) => (BreakageKind.PartReversed, test, new Unless(test, test.Location));

    private static IEnumerable<(BreakageKind Kind, Condition Part, Condition Whole)> Moved(AttributeTest test)
    {
        var step = StepOf(test);
        yield return (BreakageKind.MovedUp, test, test with { Number = test.Number + step, High = test.High + step });
        yield return (BreakageKind.MovedDown, test, test with { Number = test.Number - step, High = test.High - step });
    }

    // One step of a rating; a quarter of a measure, or of the room between two.
    private static double StepOf(AttributeTest test)
    {
        var room = test.Comparison == Language.Comparison.Between ? test.High - test.Number : Math.Abs(test.Number);
        return test.Attribute.Kind == AttributeKind.Rating || room == 0 ? 1 : room / 4;
    }
}
