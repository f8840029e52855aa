using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>Centres and axes of the leg's joints, and what hangs on them.</summary>
internal static class LegJoints
{
    public static bool Has(JointMotion motion) => motion is JointMotion.HipFlexion or JointMotion.HipAbduction or JointMotion.KneeFlexion or JointMotion.AnkleDorsiflexion;

    public static Opposition At(in LegPose pose, JointMotion motion, double sense) => motion switch
    {
        JointMotion.KneeFlexion => new Opposition(pose.Knee, -pose.Thigh.Z, sense),
        JointMotion.AnkleDorsiflexion => new Opposition(pose.Ankle, pose.Foot.Z, sense),
        JointMotion.HipAbduction => new Opposition(Vector3.Zero, pose.AbductionAxis, sense),
        _ => new Opposition(Vector3.Zero, pose.Trunk.Z, sense),
    };

    /// <summary>Moment of the segments beyond the joint.</summary>
    public static double Weights(in LegPose pose, BodyDimensions body, in Opposition about, JointMotion motion)
    {
        var beyond = about.OfWeight(pose.FootCentre, body.Foot.Kilograms);
        if (motion == JointMotion.AnkleDorsiflexion)
        {
            return beyond;
        }

        beyond += about.OfWeight(pose.ShankCentre, body.Shank.Kilograms);
        return motion == JointMotion.KneeFlexion ? beyond : beyond + about.OfWeight(pose.ThighCentre, body.Thigh.Kilograms);
    }
}
