namespace ScoreRules.Mechanics.Bodies;

/// <summary>
/// One arm in the room, the shoulder joint at the origin. The upper arm is turned about its own axis, raised to the side, swung
/// about the trunk's long axis and flexed about the trunk's side axis, in this order; the forearm is flexed about the elbow's
/// side axis and turned about its own axis; the wrist is extended last.
/// </summary>
/// <param name="Trunk">The trunk in the room.</param>
/// <param name="UpperArm">Axes of the upper arm; it points along minus y.</param>
/// <param name="Forearm">Axes of the forearm; it points along minus y.</param>
/// <param name="Hand">Axes of the hand; it points along minus y, the thumb side of a closed fist along x.</param>
/// <param name="AbductionAxis">Axis of shoulder abduction in the room.</param>
/// <param name="Elbow">Elbow joint, m.</param>
/// <param name="Wrist">Wrist joint, m.</param>
/// <param name="Grip">Where a load in the hand acts, m.</param>
/// <param name="UpperArmCentre">Centre of mass of the upper arm, m.</param>
/// <param name="ForearmCentre">Centre of mass of the forearm, m.</param>
/// <param name="HandCentre">Centre of mass of the hand, m.</param>
public readonly record struct ArmPose(
    Rotation Trunk,
    Rotation UpperArm,
    Rotation Forearm,
    Rotation Hand,
    Vector3 AbductionAxis,
    Vector3 Elbow,
    Vector3 Wrist,
    Vector3 Grip,
    Vector3 UpperArmCentre,
    Vector3 ForearmCentre,
    Vector3 HandCentre)
{
    /// <summary>Wrist joint to the axis of a bar in the hand, m; an assumption of the reference numbers, no source.</summary>
    public const double GripMetres = 0.060;

    /// <summary>The arm in a posture.</summary>
    /// <param name="body">Whose arm.</param>
    /// <param name="angles">Joint angles, degrees.</param>
    public static ArmPose Of(BodyDimensions body, in JointAngles angles) =>
        Of(body, angles, Rotation.OfTrunk(angles[JointMotion.TrunkPitch], angles[JointMotion.TrunkRoll]));

    /// <summary>The arm in a posture on a trunk turned in any way.</summary>
    /// <param name="body">Whose arm.</param>
    /// <param name="angles">Joint angles, degrees; those of the trunk are not used.</param>
    /// <param name="trunk">The trunk in the room.</param>
    public static ArmPose Of(BodyDimensions body, in JointAngles angles, Rotation trunk)
    {
        var swing = trunk * Rotation.AboutZ(angles[JointMotion.ShoulderFlexion]) * Rotation.AboutY(angles[JointMotion.ShoulderHorizontalAdduction]);
        var upperArm = swing * Rotation.AboutX(-angles[JointMotion.ShoulderAbduction]) * Rotation.AboutY(-angles[JointMotion.ShoulderExternalRotation]);
        var bent = upperArm * Rotation.AboutZ(angles[JointMotion.ElbowFlexion]);
        var forearm = bent * Rotation.AboutY(-angles[JointMotion.ForearmSupination]);
        var hand = forearm * Rotation.AboutX(-angles[JointMotion.WristExtension]);
        var elbow = -body.UpperArm.Metres * upperArm.Y;
        var wrist = elbow - (body.Forearm.Metres * forearm.Y);
        return new ArmPose(
            trunk, upperArm, forearm, hand, -swing.X, elbow, wrist, wrist - (GripMetres * hand.Y),
            -body.UpperArm.CentreMetres * upperArm.Y, elbow - (body.Forearm.CentreMetres * forearm.Y), wrist - (body.Hand.CentreMetres * hand.Y));
    }
}
