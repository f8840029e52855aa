using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Draws;

namespace ScoreRules.Certainty;

/// <summary>Draws a number inside the doubt that its author stated.</summary>
internal static class UncertainDraw
{
    /// <summary>A number: normal for give or take, even over a range, a triangle by inversion; the number itself when it is certain.</summary>
    public static double Next(UncertainNumber number, Generator generator) => number.Shape switch
    {
        DoubtShape.GiveOrTake => number.Number + (number.Spread * generator.NextNormal()),
        DoubtShape.Even => number.Low + ((number.High - number.Low) * generator.NextUniform()),
        DoubtShape.Triangle => Triangle(number, generator.NextUniform()),
        _ => number.Number,
    };

    private static double Triangle(UncertainNumber number, double uniform)
    {
        var (low, top, high) = (number.Low, number.Number, number.High);
        var rise = (top - low) / (high - low);
        return uniform < rise ? low + Math.Sqrt(uniform * (high - low) * (top - low)) : high - Math.Sqrt((1 - uniform) * (high - low) * (high - top));
    }
}
