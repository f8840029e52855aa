using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;

namespace ScoreRules.Publishing.Derivation;

/// <summary>Load and length over the range in block characters, with the long third marked.</summary>
internal static class CurveText
{
    private const int Rows = 5;
    private const int Axis = 9;

    public static void Print(TextBlock block, DerivedMovement derived, MovementFacts facts)
    {
        var shape = LoadShape.Of(facts);
        block.Blank();
        block.Line(LoadHeading(facts, shape));
        if (shape.Load is { } load)
        {
            Panel(block, load, "peak", "0");
        }

        Helping(block, facts);
        if (shape.MeanLength is { } length)
        {
            block.Blank();
            block.Line($"How long the {derived.Target.Name} are over the range, by share");
            Panel(block, length, "longest", "shortest");
            block.Line(new string(' ', Axis) + TextCurve.Third(shape.IsLongAtStart, "long third"));
        }

        if (shape.Load is not null || !shape.Lengths.IsEmpty)
        {
            block.Line(new string(' ', Axis) + Scale(shape));
        }
    }

    private static string LoadHeading(MovementFacts facts, LoadShape shape) => shape switch
    {
        { IsAssumed: true } => "Load over the range: an even load is assumed, because the house accepts it",
        { Load: null, Moments: not null } => "Load over the range: it helps the target at every angle, so there is nothing to hold",
        { Load: null } => "Load over the range: cannot be worked out; what is missing stands below",
        _ => $"Load over the range: peak {DeriveWords.Value(facts["peak moment"].Fact, facts["peak moment"].Value!.Value)} at {DeriveWords.Number(facts["angle of peak moment"].Value!.Value, 0)}°, one side",
    };

    private static void Helping(TextBlock block, MovementFacts facts)
    {
        if (!facts.Helping.IsEmpty)
        {
            var spans = facts.Helping.Select(span => $"{DeriveWords.Number(span.FromDegrees, 0)}° to {DeriveWords.Number(span.ToDegrees, 0)}°");
            block.Wrapped($"The load helps instead of opposing from {FactText.Join(spans)}; there the curve is 0.", Axis);
        }
    }

    private static void Panel(TextBlock block, IReadOnlyList<double> values, string top, string bottom)
    {
        var rows = TextCurve.Rows(values, Rows);
        for (var i = 0; i < rows.Length; i++)
        {
            var label = i == 0 ? top : i == rows.Length - 1 ? bottom : "";
            block.Line($"{label,8}│{rows[i]}");
        }
    }

    private static string Scale(LoadShape shape)
    {
        var (start, middle, end) = (Degrees(shape.Angles[0]), Degrees(shape.Angles[shape.Angles.Length / 2]), Degrees(shape.Angles[^1]));
        var (left, right) = ($"{start} start", $"end {end}");
        var gap = (TextCurve.Columns - middle.Length) / 2;
        return TextBlock.Pad(TextBlock.Pad(left, gap) + middle, TextCurve.Columns - right.Length) + right;
    }

    private static string Degrees(double angle) => $"{DeriveWords.Number(angle, 0)}°";
}
