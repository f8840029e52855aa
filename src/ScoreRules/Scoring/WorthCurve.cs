using ScoreRules.Language.Binding;

namespace ScoreRules.Scoring;

/// <summary>Applies a worth function.</summary>
public static class WorthCurve
{
    /// <summary>
    /// Worth of a number, 0 to 1: on straight lines between points, or the worth of the last point at or below it for
    /// steps. Outside the points the end value holds.
    /// </summary>
    public static double At(WorthFunction worth, double number)
    {
        var points = worth.Points;
        if (number <= points[0].At)
        {
            return points[0].Worth;
        }

        for (var i = 1; i < points.Length; i++)
        {
            if (number < points[i].At)
            {
                var (low, high) = (points[i - 1], points[i]);
                return worth.IsStep ? low.Worth : low.Worth + ((high.Worth - low.Worth) * (number - low.At) / (high.At - low.At));
            }
        }

        return points[^1].Worth;
    }

    /// <summary>Worth of a word, by its code; NaN for a list without a word (code below 0) and for a word without a worth.</summary>
    public static double OfCode(WorthFunction worth, int code) => !worth.Points.IsEmpty ? At(worth, double.NaN) : code < 0 ? double.NaN : worth.ByCode[code];
}
