namespace ScoreRules.Language.Binding;

/// <summary>A number with the doubt its author stated. The ranking that is printed uses <paramref name="Number"/> alone.</summary>
/// <param name="Number">The single number that stands for it: the number, the middle of an even range, the top of a triangle.</param>
/// <param name="Shape">How the doubt is spread.</param>
/// <param name="Low">Lowest number of a range; equal to <paramref name="Number"/> for other shapes.</param>
/// <param name="High">Highest number of a range; equal to <paramref name="Number"/> for other shapes.</param>
/// <param name="Spread">
/// One standard deviation: what follows <c>give or take</c>; (b - a) / sqrt(12) for an even range; for a triangle
/// sqrt((a^2 + b^2 + c^2 - ab - ac - bc) / 18). 0 when certain.
/// </param>
public sealed record UncertainNumber(double Number, DoubtShape Shape, double Low, double High, double Spread)
{
    /// <summary>Minus the number, with the same doubt.</summary>
    public UncertainNumber Negated => this with { Number = -Number, Low = -High, High = -Low };

    /// <summary>A number without doubt.</summary>
    public static UncertainNumber Certain(double number) => new(number, DoubtShape.Certain, number, number, 0);

    /// <summary>A number give or take one standard deviation.</summary>
    public static UncertainNumber GiveOrTake(double number, double spread) => new(number, DoubtShape.GiveOrTake, number, number, spread);

    /// <summary>An even range.</summary>
    public static UncertainNumber Even(double low, double high) => new((low + high) / 2, DoubtShape.Even, low, high, (high - low) / Math.Sqrt(12));

    /// <summary>A triangle.</summary>
    public static UncertainNumber Triangle(double low, double likely, double high) =>
        new(likely, DoubtShape.Triangle, low, high, Math.Sqrt(((low * low) + (likely * likely) + (high * high) - (low * likely) - (low * high) - (likely * high)) / 18));
}
