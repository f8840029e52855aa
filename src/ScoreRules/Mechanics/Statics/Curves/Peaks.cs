namespace ScoreRules.Mechanics.Statics.Curves;

/// <summary>Finds the peak of a curve between its steps.</summary>
public static class Peaks
{
    /// <summary>
    /// A parabola through the three highest neighbouring steps; its top is kept inside them, so a peak at an end of the range
    /// stays there.
    /// </summary>
    /// <param name="curve">At least three points.</param>
    public static PeakMoment Of(MomentCurve curve)
    {
        var points = curve.Points;
        var highest = Highest(curve);
        var middle = Math.Clamp(highest, 1, points.Length - 2);
        var (before, at, after) = (points[middle - 1].Moment, points[middle].Moment, points[middle + 1].Moment);
        var bend = before - (2 * at) + after;
        if (bend >= 0)
        {
            return new PeakMoment(points[highest].AngleDegrees, points[highest].Moment);
        }

        var offset = Math.Clamp((before - after) / (2 * bend), -1, 1);
        var step = points[1].AngleDegrees - points[0].AngleDegrees;
        return new PeakMoment(points[middle].AngleDegrees + (offset * step), at + (offset * (after - before) / 2) + (offset * offset * bend / 2));
    }

    private static int Highest(MomentCurve curve)
    {
        var best = 0;
        for (var i = 1; i < curve.Points.Length; i++)
        {
            best = curve.Points[i].Moment > curve.Points[best].Moment ? i : best;
        }

        return best;
    }
}
