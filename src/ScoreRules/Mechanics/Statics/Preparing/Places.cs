using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Methods;

namespace ScoreRules.Mechanics.Statics.Preparing;

/// <summary>Where joints and load points are in the room; shoulder or hip is the origin.</summary>
internal static class Places
{
    /// <summary>The joint pulleys are measured from: the first one that moves, in the start posture.</summary>
    public static Vector3 FirstMovingJoint(Setup setup) => Joint(setup.Body, setup.Start, FirstMoving(setup.Mechanism));

    public static JointMotion FirstMoving(Mechanism mechanism) =>
        mechanism.Moving.Where(motion => motion is not (JointMotion.TrunkPitch or JointMotion.TrunkRoll)).DefaultIfEmpty(mechanism.WorkingJoint).First();

    public static Vector3 LoadPoint(Setup setup, in JointAngles angles)
    {
        if (!ArmJoints.Has(setup.Working))
        {
            return OpenLeg.PointOf(LegPose.Of(setup.Body, angles), setup.Mechanism);
        }

        var pose = ArmPose.Of(setup.Body, angles);
        return setup.Mechanism.Method == MomentMethod.InLine ? pose.Elbow : OpenArm.PointOf(pose, setup.Mechanism.LoadPoint);
    }

    private static Vector3 Joint(BodyDimensions body, in JointAngles angles, JointMotion motion) => motion switch
    {
        JointMotion.ElbowFlexion or JointMotion.ForearmSupination => ArmPose.Of(body, angles).Elbow,
        JointMotion.WristExtension => ArmPose.Of(body, angles).Wrist,
        JointMotion.KneeFlexion => LegPose.Of(body, angles).Knee,
        JointMotion.AnkleDorsiflexion => LegPose.Of(body, angles).Ankle,
        _ => Vector3.Zero,
    };
}
