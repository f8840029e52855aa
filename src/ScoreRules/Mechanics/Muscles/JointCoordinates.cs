using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>The angles of a posture as the muscle data take them, worked out once for all muscles. Degrees.</summary>
/// <param name="HipFlexion">See <see cref="JointCoordinate.HipFlexion"/>.</param>
/// <param name="HipAdduction">See <see cref="JointCoordinate.HipAdduction"/>.</param>
/// <param name="KneeFlexion">See <see cref="JointCoordinate.KneeFlexion"/>.</param>
/// <param name="AnkleDorsiflexion">See <see cref="JointCoordinate.AnkleDorsiflexion"/>.</param>
/// <param name="ElbowFlexion">See <see cref="JointCoordinate.ElbowFlexion"/>.</param>
/// <param name="ShoulderFlexion">See <see cref="JointCoordinate.ShoulderFlexion"/>.</param>
/// <param name="ShoulderPlane">See <see cref="JointCoordinate.ShoulderPlane"/>.</param>
/// <param name="ShoulderElevation">See <see cref="JointCoordinate.ShoulderElevation"/>.</param>
/// <param name="OffSagittal">Angle between the upper arm and where flexion alone would put it, 0 to 180.</param>
public readonly record struct JointCoordinates(
    double HipFlexion,
    double HipAdduction,
    double KneeFlexion,
    double AnkleDorsiflexion,
    double ElbowFlexion,
    double ShoulderFlexion,
    double ShoulderPlane,
    double ShoulderElevation,
    double OffSagittal)
{
    /// <summary>One of the angles.</summary>
    public double this[JointCoordinate coordinate] => coordinate switch
    {
        JointCoordinate.HipFlexion => HipFlexion,
        JointCoordinate.HipAdduction => HipAdduction,
        JointCoordinate.KneeFlexion => KneeFlexion,
        JointCoordinate.AnkleDorsiflexion => AnkleDorsiflexion,
        JointCoordinate.ElbowFlexion => ElbowFlexion,
        JointCoordinate.ShoulderFlexion => ShoulderFlexion,
        JointCoordinate.ShoulderPlane => ShoulderPlane,
        _ => ShoulderElevation,
    };

    /// <summary>The angles of a posture. Angles of the trunk in the room have no part in them.</summary>
    /// <param name="angles">Joint angles, degrees.</param>
    public static JointCoordinates Of(in JointAngles angles)
    {
        var arm = UpperArmDirection.Of(angles);
        var flexion = angles[JointMotion.ShoulderFlexion];
        var (sin, cos) = Degrees.SinCos(flexion);
        return new JointCoordinates(
            angles[JointMotion.HipFlexion],
            -angles[JointMotion.HipAbduction],
            angles[JointMotion.KneeFlexion],
            angles[JointMotion.AnkleDorsiflexion],
            angles[JointMotion.ElbowFlexion],
            flexion,
            arm.Plane,
            arm.Elevation,
            arm.AngleTo(new UpperArmDirection(new Vector3(sin, -cos, 0))));
    }

    /// <summary>The angles of a posture; see <see cref="Of(in JointAngles)"/>.</summary>
    /// <param name="posture">The posture.</param>
    public static JointCoordinates Of(Posture posture) => Of(JointAngles.Of(posture));
}
