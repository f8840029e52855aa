using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>Which anatomical motions move an angle of the data.</summary>
internal static class CoordinateMotions
{
    /// <summary>Whether an angle of the data changes with a motion.</summary>
    /// <param name="coordinate">The angle.</param>
    /// <param name="motion">The motion.</param>
    public static bool DependsOn(this JointCoordinate coordinate, JointMotion motion) => coordinate switch
    {
        JointCoordinate.HipFlexion => motion == JointMotion.HipFlexion,
        JointCoordinate.HipAdduction => motion == JointMotion.HipAbduction,
        JointCoordinate.KneeFlexion => motion == JointMotion.KneeFlexion,
        JointCoordinate.AnkleDorsiflexion => motion == JointMotion.AnkleDorsiflexion,
        JointCoordinate.ElbowFlexion => motion == JointMotion.ElbowFlexion,
        JointCoordinate.ShoulderFlexion => motion == JointMotion.ShoulderFlexion,
        _ => motion is JointMotion.ShoulderFlexion or JointMotion.ShoulderAbduction or JointMotion.ShoulderHorizontalAdduction,
    };
}
