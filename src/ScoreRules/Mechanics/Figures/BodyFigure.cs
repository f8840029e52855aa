using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Figures;

/// <summary>A body in the room at one instant of a movement, as points to be drawn; what stays put in the movement is the origin. m.</summary>
/// <param name="Part">How far along the lifting phase, 0 to 1.</param>
/// <param name="AngleDegrees">Angle of the working joint.</param>
/// <param name="Hip">Hip joint.</param>
/// <param name="Shoulder">Shoulder joint.</param>
/// <param name="Head">Centre of the head.</param>
/// <param name="Trunk">Axes of the trunk: forward, towards the head, to the working side.</param>
/// <param name="Arm">The working side's arm.</param>
/// <param name="Leg">The working side's leg.</param>
/// <param name="Joint">The working joint.</param>
/// <param name="Load">The load; null where its line cannot be told.</param>
public sealed record BodyFigure(double Part, double AngleDegrees, Vector3 Hip, Vector3 Shoulder, Vector3 Head, Rotation Trunk, LimbLine Arm, LimbLine Leg, Vector3 Joint, LoadLine? Load)
{
    /// <summary>Radius of the head, m, fraction of stature; for looks, no source.</summary>
    public const double HeadRadius = 0.055;

    /// <summary>Centre of the head over the shoulder joints, fraction of stature; for looks, no source.</summary>
    internal const double HeadHeight = 0.115;

    /// <summary>Whether the ball of the foot alone carries it; that ball then is the origin.</summary>
    public bool IsOnBallOfFoot { get; init; }

    /// <summary>The same figure moved.</summary>
    /// <param name="by">How far, m.</param>
    public BodyFigure Moved(Vector3 by) => this with
    {
        Hip = Hip + by,
        Shoulder = Shoulder + by,
        Head = Head + by,
        Arm = Arm with { Joints = [.. Arm.Joints.Select(joint => joint + by)] },
        Leg = Leg with { Joints = [.. Leg.Joints.Select(joint => joint + by)] },
        Joint = Joint + by,
        Load = Load is { } load ? load with { At = load.At + by } : null,
    };
}
