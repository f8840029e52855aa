using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>Centres and axes of the arm's joints, and what hangs on them.</summary>
internal static class ArmJoints
{
    public static bool Has(JointMotion motion) => motion is JointMotion.ElbowFlexion || IsShoulder(motion);

    public static bool IsShoulder(JointMotion motion) => motion is JointMotion.ShoulderFlexion or JointMotion.ShoulderAbduction
        or JointMotion.ShoulderHorizontalAdduction or JointMotion.ShoulderExternalRotation;

    public static Opposition At(in ArmPose pose, JointMotion motion, double sense) => motion switch
    {
        JointMotion.ElbowFlexion => new Opposition(pose.Elbow, pose.UpperArm.Z, sense),
        JointMotion.ShoulderAbduction => new Opposition(Vector3.Zero, pose.AbductionAxis, sense),
        JointMotion.ShoulderHorizontalAdduction => new Opposition(Vector3.Zero, pose.Trunk.Y, sense),
        JointMotion.ShoulderExternalRotation => new Opposition(Vector3.Zero, -pose.UpperArm.Y, sense),
        _ => new Opposition(Vector3.Zero, pose.Trunk.Z, sense),
    };

    /// <summary>Moment of the segments beyond the joint.</summary>
    public static double Weights(in ArmPose pose, BodyDimensions body, in Opposition about, JointMotion motion)
    {
        var beyond = about.OfWeight(pose.ForearmCentre, body.Forearm.Kilograms) + about.OfWeight(pose.HandCentre, body.Hand.Kilograms);
        return IsShoulder(motion) ? beyond + about.OfWeight(pose.UpperArmCentre, body.UpperArm.Kilograms) : beyond;
    }
}
