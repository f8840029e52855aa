namespace ScoreRules.Mechanics.Bodies;

/// <summary>
/// One leg in the room, the hip joint at the origin; the pelvis moves with the trunk. The thigh is raised to the side, then
/// flexed about the trunk's side axis; knee and ankle turn about the side axis of the segment above.
/// </summary>
/// <param name="Trunk">The trunk in the room.</param>
/// <param name="Thigh">Axes of the thigh; it points along minus y.</param>
/// <param name="Foot">Axes of the foot; heel to toe along x, the shank side along y.</param>
/// <param name="AbductionAxis">Axis of hip abduction in the room.</param>
/// <param name="Knee">Knee joint, m.</param>
/// <param name="Ankle">Ankle joint, m.</param>
/// <param name="ThighCentre">Centre of mass of the thigh, m.</param>
/// <param name="ShankCentre">Centre of mass of the shank, m.</param>
/// <param name="FootCentre">Centre of mass of the foot, m.</param>
public readonly record struct LegPose(
    Rotation Trunk,
    Rotation Thigh,
    Rotation Foot,
    Vector3 AbductionAxis,
    Vector3 Knee,
    Vector3 Ankle,
    Vector3 ThighCentre,
    Vector3 ShankCentre,
    Vector3 FootCentre)
{
    /// <summary>The leg in a posture.</summary>
    /// <param name="body">Whose leg.</param>
    /// <param name="angles">Joint angles, degrees.</param>
    public static LegPose Of(BodyDimensions body, in JointAngles angles) =>
        Of(body, angles, Rotation.OfTrunk(angles[JointMotion.TrunkPitch], angles[JointMotion.TrunkRoll]));

    /// <summary>The leg in a posture on a trunk turned in any way.</summary>
    /// <param name="body">Whose leg.</param>
    /// <param name="angles">Joint angles, degrees; those of the trunk are not used.</param>
    /// <param name="trunk">The trunk in the room.</param>
    public static LegPose Of(BodyDimensions body, in JointAngles angles, Rotation trunk)
    {
        var flexed = trunk * Rotation.AboutZ(angles[JointMotion.HipFlexion]);
        var thigh = flexed * Rotation.AboutX(-angles[JointMotion.HipAbduction]);
        var shank = thigh * Rotation.AboutZ(-angles[JointMotion.KneeFlexion]);
        var foot = shank * Rotation.AboutZ(angles[JointMotion.AnkleDorsiflexion]);
        var knee = -body.Thigh.Metres * thigh.Y;
        var ankle = knee - (body.Shank.Metres * shank.Y);
        return new LegPose(
            trunk, thigh, foot, -flexed.X, knee, ankle,
            -body.Thigh.CentreMetres * thigh.Y, knee - (body.Shank.CentreMetres * shank.Y), FootCentreOf(body, ankle, foot));
    }

    /// <summary>A point of the foot, seen from the ankle.</summary>
    /// <param name="ahead">Towards the toes, m.</param>
    /// <param name="below">Towards the sole, m.</param>
    public Vector3 OnFoot(double ahead, double below) => Ankle + (ahead * Foot.X) - (below * Foot.Y);

    private static Vector3 FootCentreOf(BodyDimensions body, Vector3 ankle, Rotation foot)
    {
        var ahead = body.Foot.CentreMetres - (BodyConstants.HeelToAnkle * body.Foot.Metres);
        var below = body.AnkleMetres - (BodyConstants.FootCentreHeight * body.Person.StatureMetres);
        return ankle + (ahead * foot.X) - (below * foot.Y);
    }
}
