using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>
/// Where the upper arm points, seen from the trunk: x forward, y up, z out to the side of that arm. The anatomical angles turn a hanging
/// arm (0, -1, 0) in this order, the same as in <see cref="ArmPose"/>: abduction about the forward axis, horizontal adduction about the
/// upward axis, flexion about the sideways axis. Thus each angle alone gives what its name says, horizontal adduction of an abducted arm
/// is the plane itself, and an arm raised forward keeps a little abduction outward. Horizontal adduction of an arm that is not abducted
/// turns it about its own length and leaves the direction as it was.
/// </summary>
/// <param name="Pointing">From shoulder to elbow, length 1.</param>
public readonly record struct UpperArmDirection(Vector3 Pointing)
{
    /// <summary>Plane of elevation, degrees from -90 up to but not 270: 0 to the side, 90 forward, 180 towards the other side, -90 backward; 0 for an arm that hangs.</summary>
    public double Plane => Degrees.Atan2(Pointing.X, Pointing.Z) is var plane && plane < -90 ? plane + 360 : plane;

    /// <summary>Angle from hanging, degrees from 0 to 180.</summary>
    public double Elevation => Degrees.Atan2(FromVertical, -Pointing.Y);

    /// <summary>Distance of the elbow from the vertical through the shoulder, as a share of the upper arm: the sine of the elevation.</summary>
    internal double FromVertical => Math.Sqrt((Pointing.X * Pointing.X) + (Pointing.Z * Pointing.Z));

    /// <summary>Direction of the upper arm in a posture.</summary>
    /// <param name="angles">Joint angles, degrees.</param>
    public static UpperArmDirection Of(in JointAngles angles) =>
        new(Swing(angles).Of(Rotation.AboutX(-angles[JointMotion.ShoulderAbduction]).Of(Vector3.Down)));

    /// <summary>Angle between this direction and another, degrees from 0 to 180.</summary>
    /// <param name="other">The other.</param>
    public double AngleTo(UpperArmDirection other) => Degrees.Atan2(Pointing.Cross(other.Pointing).Length, Pointing.Dot(other.Pointing));

    /// <summary>How the direction changes as one angle of the posture grows, a radian: axis of the motion x direction.</summary>
    /// <param name="angles">Joint angles, degrees.</param>
    /// <param name="motion">Which angle; one that does not turn the upper arm gives no change.</param>
    internal static Vector3 RateOf(in JointAngles angles, JointMotion motion)
    {
        var axis = motion switch
        {
            JointMotion.ShoulderFlexion => Rotation.None.Z,
            JointMotion.ShoulderHorizontalAdduction => Rotation.AboutZ(angles[JointMotion.ShoulderFlexion]).Y,
            JointMotion.ShoulderAbduction => -Swing(angles).X,
            _ => Vector3.Zero,
        };
        return axis.Cross(Of(angles).Pointing);
    }

    private static Rotation Swing(in JointAngles angles) =>
        Rotation.AboutZ(angles[JointMotion.ShoulderFlexion]) * Rotation.AboutY(angles[JointMotion.ShoulderHorizontalAdduction]);
}
