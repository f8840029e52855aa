using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Strains;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>All numbers facts are made from: a movement, its moments and the lengths of the muscles over the same steps.</summary>
internal sealed class Working
{
    private Working(Mechanism mechanism, LengthSweep sweep, MomentCurve? curve, double[]? load, BodySupport? support)
    {
        (Mechanism, Sweep, Curve, Load, Support) = (mechanism, sweep, curve, load, support);
        Peak = curve is not null && Peaks.Of(curve) is { Moment: > 0 } peak ? peak : null;
    }

    public Mechanism Mechanism { get; }

    public LengthSweep Sweep { get; }

    /// <summary>The curve, where there is one; an even load that is assumed has none.</summary>
    public MomentCurve? Curve { get; }

    /// <summary>Moment / peak at each step, 0 where the load helps; none without a curve, or without a moment that opposes.</summary>
    public double[]? Load { get; }

    public BodySupport? Support { get; }

    public PeakMoment? Peak { get; }

    /// <summary>Mean load, 0 to 1.</summary>
    public double? Evenness => Load is { } load ? Trapezoid.Mean(load) : null;

    /// <summary>Part of the range over which the load helps.</summary>
    public double? Helping => Curve is { } curve
        ? CurveSummary.HelpingSpans(curve).Sum(span => Math.Abs(span.ToDegrees - span.FromDegrees)) / curve.RangeDegrees
        : Load is null ? null : 0;

    public static Working Of(MomentProfile profile, LengthSweep sweep, bool isEven, BodySupport? support)
    {
        var load = isEven ? [.. Enumerable.Repeat(1.0, MomentCurve.Steps)] : profile.Curve is { } curve ? Relative(curve) : null;
        return new Working(profile.Mechanism, sweep, profile.Curve, load, support);
    }

    /// <summary>Mean over the muscles by share; none without muscles.</summary>
    public double? OfLengths(Func<MuscleSweep, double> number)
    {
        var sum = Sweep.Muscles.Length > 0 ? 0.0 : (double?)null;
        for (var i = 0; i < Sweep.Muscles.Length; i++)
        {
            sum += Sweep.Target.Shares[i] * number(Sweep.Muscles[i]);
        }

        return sum;
    }

    /// <summary>Mean over the muscles by share; none without muscles or without a load.</summary>
    public double? OfLoaded(Func<MuscleSweep, double[], double> number) => Load is { } load ? OfLengths(muscle => number(muscle, load)) : null;

    private static double[]? Relative(MomentCurve curve)
    {
        var peak = Peaks.Of(curve).Moment;
        return peak > 0 ? [.. curve.Points.Select(point => Math.Max(0, point.Moment / peak))] : null;
    }
}
