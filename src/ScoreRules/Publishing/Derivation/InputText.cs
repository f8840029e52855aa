using System.Globalization;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Publishing.Derivation;

/// <summary>Posture and load: each number that was used, with its origin.</summary>
internal static class InputText
{
    private const int Name = 52;

    public static void Print(TextBlock block, MovementFacts facts)
    {
        block.Blank();
        block.Line("Posture and load used");
        foreach (var input in facts.Profile.Inputs.Where(input => !input.Name.EndsWith("of the range", StringComparison.Ordinal)))
        {
            Line(block, input.Name, Value(input), DeriveWords.Origin(input.Origin));
        }

        var mechanism = facts.Profile.Mechanism;
        foreach (var motion in mechanism.Start.Degrees.Keys.Order())
        {
            var (start, end) = (mechanism.Start[motion], mechanism.End[motion]);
            Line(block, DeriveWords.Motion(motion), start == end ? $"{Number(start)}°" : $"{Number(start)}° to {Number(end)}°", "stated");
        }
    }

    /// <summary>All numbers, each once: those of the moments, then the angles that only muscles need.</summary>
    public static IEnumerable<InputUse> Of(MovementFacts facts) =>
        facts.Profile.Inputs.Concat(facts.Values.SelectMany(value => value.Inputs)).DistinctBy(input => input.Name);

    private static void Line(TextBlock block, string name, string value, string origin) =>
        block.Line(TextBlock.Pad($"  {name}", Name) + TextBlock.Pad(value, 16) + origin);

    private static string Number(double value) => Tiering.Rounding.Printed(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Value(InputUse input)
    {
        var number = Number(input.Value);
        return input.Unit switch
        {
            "°" => number + "°",
            "" => number,
            _ => $"{number} {input.Unit}",
        };
    }
}
