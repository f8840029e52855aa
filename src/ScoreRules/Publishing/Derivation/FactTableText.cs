using System.Collections.Immutable;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Modelling;

namespace ScoreRules.Publishing.Derivation;

/// <summary>The facts in columns: value, interval, grade; then those of single muscles.</summary>
internal static class FactTableText
{
    private const int Name = 44;
    private const int Value = 12;
    private const int Interval = 16;

    private static readonly ImmutableArray<string> Loaded = ["loaded length in the long third", "longest length under load"];
    private static readonly ImmutableArray<string> Unloaded = ["mean length", "longest length"];

    public static void Print(TextBlock block, MovementFacts facts, ImmutableArray<MuscleFacts> muscles)
    {
        block.Blank();
        block.Line(TextBlock.Pad("Facts", Name) + TextBlock.Pad("value", Value) + TextBlock.Pad("interval", Interval) + "grade");
        foreach (var value in facts.Values.Where(value => value.Value is not null))
        {
            block.Line(Row(value));
        }

        var isAssumed = facts.Values.Any(value => value.IsAssumed);
        block.Wrapped($"{(isAssumed ? "Marked *: an even load is assumed. " : "")}Interval: what the value becomes when one input is a little off. Grade of the least reliable muscle: A models agree, B plausible, C sign only.", 2);
        ByMuscle(block, muscles);
    }

    private static string Row(FactValue value) =>
        TextBlock.Pad($"  {value.Fact.Name}{(value.IsAssumed ? " *" : "")}", Name)
        + TextBlock.Pad(DeriveWords.Value(value.Fact, value.Value!.Value), Value)
        + TextBlock.Pad(value.Interval is { } interval && value.Fact.Basis != FactBasis.Support ? DeriveWords.Interval(value.Fact, interval) : "-", Interval)
        + DeriveWords.Grade(value.Grade);

    private static void ByMuscle(TextBlock block, ImmutableArray<MuscleFacts> muscles)
    {
        if (muscles.Length < 2)
        {
            return;
        }

        block.Blank();
        var isLoaded = muscles[0].Values.Any(value => value.Fact.Name == Loaded[0] && value.Value is not null);
        var (first, second) = isLoaded ? ("long third", "under load") : ("mean", "longest");
        block.Line(TextBlock.Pad($"By muscle: {(isLoaded ? "loaded length, longest length" : "length")}", Name) + TextBlock.Pad(first, Value) + TextBlock.Pad(second, Interval) + "grade");
        foreach (var muscle in muscles)
        {
            var values = (isLoaded ? Loaded : Unloaded).Select(name => muscle.Values.First(value => value.Fact.Name == name)).ToList();
            block.Line(TextBlock.Pad($"  {muscle.Muscle}", Name) + TextBlock.Pad(Cell(values[0]), Value) + TextBlock.Pad(Cell(values[1]), Interval) + DeriveWords.Grade(MuscleModel.FindMuscle(muscle.Muscle)?.Reliability));
        }
    }

    private static string Cell(FactValue value) => value.Value is { } number ? DeriveWords.Value(value.Fact, number) : "-";
}
