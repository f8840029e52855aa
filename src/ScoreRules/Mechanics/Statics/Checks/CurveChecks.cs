using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using ScoreRules.Mechanics.Statics.Preparing;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>What the finished curve gives away.</summary>
internal static class CurveChecks
{
    /// <summary>A moment at the start below minus this part of the peak counts as helping.</summary>
    public const double StartTolerance = 0.02;

    public static IEnumerable<MechanicsFinding> Of(Setup setup, MomentCurve curve)
    {
        if (curve.Points.Any(point => !double.IsFinite(point.Moment)))
        {
            return [Refuse(FindingKind.BadNumber, "The numbers of this movement give no moment.", "Check posture, load and pulley: at some angle supports or pulley coincide with a joint.")];
        }

        return curve.Points.All(point => Math.Abs(point.Moment) < 1e-9)
            ? [Refuse(FindingKind.BadNumber, "Nothing loads the working joint: the moment is 0 at every angle.", "State the load, where it acts, or how much of the body's weight is carried.")]
            : [.. Tables(setup, curve), .. Start(setup, curve)];
    }

    private static IEnumerable<MechanicsFinding> Tables(Setup setup, MomentCurve curve)
    {
        if (setup.Cam is { } cam && !(cam.Covers(curve.Points[0].AngleDegrees) && cam.Covers(curve.Points[^1].AngleDegrees)))
        {
            yield return Refuse(
                FindingKind.Table,
                $"The cam's table runs from {Number(cam.Points[0].At)}° to {Number(cam.Points[^1].At)}° and does not cover the movement.",
                $"State the radius from {Number(curve.Points[0].AngleDegrees)}° to {Number(curve.Points[^1].AngleDegrees)}°.");
        }

        if (setup.Load is Pull.ToAnchor { Law: var law } band)
        {
            var lengths = curve.Points.Select((_, step) => Length(setup, band, (double)step / (curve.Points.Length - 1))).ToList();
            if (lengths.TrueForAll(length => law.Tension(length) <= 0))
            {
                yield return Refuse(FindingKind.Table, $"The band never pulls: it is at most {Number(lengths.Max())} m long.", "State a shorter slack length or an anchor further away.");
            }
            else if (law is BandLaw.Table table && lengths.Max() > table.Measured.Points[^1].At)
            {
                yield return Refuse(
                    FindingKind.Table,
                    $"The band's table ends at {Number(table.Measured.Points[^1].At)} m, but the band is stretched to {Number(lengths.Max())} m.",
                    "Measure the tension up to that length.");
            }
        }
    }

    private static double Length(Setup setup, Pull.ToAnchor band, double part) =>
        (Places.LoadPoint(setup, Bodies.JointAngles.Between(setup.Start, setup.End, part)) - band.Anchor).Length;

    private static IEnumerable<MechanicsFinding> Start(Setup setup, MomentCurve curve)
    {
        var peak = Peaks.Of(curve).Moment;
        if (peak <= 0)
        {
            yield return Warn(FindingKind.SignAtStart, "The load helps the target at every angle.", "Check the working joint, the direction of the range and the line of pull.", setup.Working);
        }
        else if (curve.Points[0].Moment < -StartTolerance * peak)
        {
            yield return Warn(
                FindingKind.SignAtStart,
                $"At the start the load helps instead of opposing: {Number(curve.Points[0].Moment)} N m at {Number(curve.Points[0].AngleDegrees)}°.",
                "Check the posture at the start and the position of weight or pulley.",
                setup.Working);
        }
    }
}
