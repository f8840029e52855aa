using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>
/// Where the upper arm points, seen from the trunk: x forward, y up, z out to the side of that arm, length 1. The anatomical angles
/// turn a hanging arm (0, -1, 0) in this order: abduction about the forward axis, horizontal adduction about the upward axis, flexion
/// about the sideways axis. Thus each angle alone gives what its name says, horizontal adduction of an abducted arm is the plane itself,
/// and an arm raised forward keeps a little abduction outward. Horizontal adduction of an arm that is not abducted turns it about its
/// own length and leaves the direction as it was.
/// </summary>
/// <param name="X">Forward.</param>
/// <param name="Y">Up.</param>
/// <param name="Z">Out to the side.</param>
public readonly record struct UpperArmDirection(double X, double Y, double Z)
{
    /// <summary>Plane of elevation, degrees over -90 and up to 270: 0 to the side, 90 forward, 180 towards the other side, 270 or -90 backward; 0 for an arm that hangs.</summary>
    public double Plane => Math.Atan2(X, Z) * Angles.Degree is var plane and < -90 ? plane + 360 : Math.Atan2(X, Z) * Angles.Degree;

    /// <summary>Angle from hanging, degrees from 0 to 180.</summary>
    public double Elevation => Math.Atan2(FromVertical, -Y) * Angles.Degree;

    /// <summary>Angle between this direction and another, degrees from 0 to 180.</summary>
    public double AngleTo(UpperArmDirection other) =>
        Math.Acos(Math.Clamp((X * other.X) + (Y * other.Y) + (Z * other.Z), -1, 1)) * Angles.Degree;

    /// <summary>Distance of the elbow from the vertical through the shoulder, as a share of the upper arm: the sine of the elevation.</summary>
    internal double FromVertical => Math.Sqrt((X * X) + (Z * Z));

    /// <summary>Direction of the upper arm in a posture.</summary>
    public static UpperArmDirection Of(Posture posture)
    {
        var (flexion, abduction, adduction) = AnglesOf(posture);
        return Flexed(Abducted(Math.Sin(abduction), Math.Cos(abduction), adduction), flexion);
    }

    /// <summary>How the direction changes as one angle of the posture grows, a radian.</summary>
    /// <param name="posture">Where.</param>
    /// <param name="motion">Which angle; one that does not turn the upper arm gives no change.</param>
    internal static UpperArmDirection RateOf(Posture posture, JointMotion motion)
    {
        var (flexion, abduction, adduction) = AnglesOf(posture);
        var at = Of(posture);
        return motion switch
        {
            JointMotion.ShoulderFlexion => new(-at.Y, at.X, 0),
            JointMotion.ShoulderAbduction => Flexed(Abducted(Math.Cos(abduction), -Math.Sin(abduction), adduction), flexion),
            JointMotion.ShoulderHorizontalAdduction => Flexed(
                new(Math.Sin(abduction) * Math.Cos(adduction), 0, -Math.Sin(abduction) * Math.Sin(adduction)), flexion),
            _ => default,
        };
    }

    private static (double Flexion, double Abduction, double Adduction) AnglesOf(Posture posture) => (
        posture[JointMotion.ShoulderFlexion] * Angles.Radian,
        posture[JointMotion.ShoulderAbduction] * Angles.Radian,
        posture[JointMotion.ShoulderHorizontalAdduction] * Angles.Radian);

    private static UpperArmDirection Abducted(double outward, double downward, double adduction) =>
        new(outward * Math.Sin(adduction), -downward, outward * Math.Cos(adduction));

    private static UpperArmDirection Flexed(UpperArmDirection at, double flexion)
    {
        var (sin, cos) = Math.SinCos(flexion);
        return new((at.X * cos) - (at.Y * sin), (at.X * sin) + (at.Y * cos), at.Z);
    }
}
