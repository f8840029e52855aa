using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Statics.Curves;

/// <summary>Numbers that describe the shape of a curve. Only moments that oppose the target count; where the load helps, zero is taken.</summary>
public static class CurveSummary
{
    /// <summary>Moment at the start of the lifting phase / peak, -; negative when the load helps there, null without a moment that opposes.</summary>
    /// <param name="curve">The curve.</param>
    public static double? StartToPeak(MomentCurve curve) => Ratio(curve.Points[0].Moment, Peaks.Of(curve).Moment);

    /// <summary>Integral of the moment over angle in one third / over the whole range, 0 to 1; null without a moment that opposes.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="third">Which third.</param>
    public static double? ShareOf(MomentCurve curve, Third third) => Ratio(Area(curve, (int)third / 3.0, ((int)third + 1) / 3.0), Area(curve, 0, 1));

    /// <summary>Mean moment in one third / peak, 0 to 1; null without a moment that opposes.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="third">Which third.</param>
    public static double? MeanToPeak(MomentCurve curve, Third third) =>
        Ratio(3 * Area(curve, (int)third / 3.0, ((int)third + 1) / 3.0), Peaks.Of(curve).Moment);

    /// <summary>Mean moment over the whole range / peak: 1 is the same load everywhere; null without a moment that opposes.</summary>
    /// <param name="curve">The curve.</param>
    public static double? Flatness(MomentCurve curve) => Ratio(Area(curve, 0, 1), Peaks.Of(curve).Moment);

    /// <summary>Where the load helps instead of opposing: the moment is below zero.</summary>
    /// <param name="curve">The curve.</param>
    public static ImmutableArray<AngleSpan> HelpingSpans(MomentCurve curve)
    {
        var spans = ImmutableArray.CreateBuilder<AngleSpan>();
        double? from = curve.Points[0].Moment < 0 ? curve.Points[0].AngleDegrees : null;
        for (var i = 1; i < curve.Points.Length; i++)
        {
            var (before, after) = (curve.Points[i - 1], curve.Points[i]);
            if (from is null && after.Moment < 0)
            {
                from = Crossing(before, after);
            }
            else if (from is { } began && after.Moment >= 0)
            {
                spans.Add(new AngleSpan(began, Crossing(before, after)));
                from = null;
            }
        }

        if (from is { } open)
        {
            spans.Add(new AngleSpan(open, curve.Points[^1].AngleDegrees));
        }

        return spans.ToImmutable();
    }

    // Area under straight lines between steps, zero where negative, over a part of the range taken as 1 long.
    private static double Area(MomentCurve curve, double from, double to)
    {
        var intervals = curve.Points.Length - 1;
        var area = 0.0;
        for (var i = (int)Math.Floor(from * intervals); i < Math.Min(intervals, Math.Ceiling(to * intervals)); i++)
        {
            var (left, right) = (curve.Points[i].Moment, curve.Points[i + 1].Moment);
            var (begin, end) = (Math.Max(0, (from * intervals) - i), Math.Min(1, (to * intervals) - i));
            area += AboveZero(left + (begin * (right - left)), left + (end * (right - left)), end - begin);
        }

        return area / intervals;
    }

    private static double AboveZero(double left, double right, double width) => (left, right) switch
    {
        ( <= 0, <= 0) => 0,
        ( >= 0, >= 0) => (left + right) / 2 * width,
        _ => Math.Max(left, right) * Math.Max(left, right) / Math.Abs(right - left) / 2 * width,
    };

    private static double Crossing(CurvePoint before, CurvePoint after) =>
        before.AngleDegrees + (before.Moment / (before.Moment - after.Moment) * (after.AngleDegrees - before.AngleDegrees));

    private static double? Ratio(double value, double whole) => whole > 1e-12 ? value / whole : null;
}
