using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Motions as coaches read them.</summary>
internal static class MotionWords
{
    public static string Of(JointMotion motion) => motion switch
    {
        JointMotion.TrunkPitch => "trunk pitch",
        JointMotion.TrunkRoll => "trunk roll",
        JointMotion.ShoulderFlexion => "shoulder flexion",
        JointMotion.ShoulderAbduction => "shoulder abduction",
        JointMotion.ShoulderHorizontalAdduction => "shoulder horizontal adduction",
        JointMotion.ShoulderExternalRotation => "shoulder external rotation",
        JointMotion.ElbowFlexion => "elbow flexion",
        JointMotion.ForearmSupination => "forearm supination",
        JointMotion.WristExtension => "wrist extension",
        JointMotion.HipFlexion => "hip flexion",
        JointMotion.HipAbduction => "hip abduction",
        JointMotion.KneeFlexion => "knee flexion",
        _ => "ankle dorsiflexion",
    };
}
