using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Curves;

/// <summary>The moment about a joint over a lifting phase, at evenly spaced angles from its start to its end.</summary>
/// <param name="Joint">The working joint.</param>
/// <param name="Points">In the order of the lifting phase; the angles may rise or fall.</param>
public sealed record MomentCurve(JointMotion Joint, ImmutableArray<CurvePoint> Points)
{
    /// <summary>Steps of a curve unless more are asked for: 60 intervals, a third of the range is 20 of them.</summary>
    public const int Steps = 61;

    /// <summary>Size of the range, degrees.</summary>
    public double RangeDegrees => Math.Abs(Points[^1].AngleDegrees - Points[0].AngleDegrees);

    /// <summary>The curve of what is lifted alone, without the body's own weight.</summary>
    public MomentCurve OfLoadAlone() => this with { Points = [.. Points.Select(point => point with { Body = 0, Limb = 0 })] };
}
