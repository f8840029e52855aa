using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Checks;

namespace ScoreRules.Mechanics.Statics.Preparing;

/// <summary>On flat feet trunk pitch, hip, knee and ankle hang together: from three the fourth follows.</summary>
internal static class StandingPosture
{
    private static readonly JointMotion[] Joints = [JointMotion.HipFlexion, JointMotion.KneeFlexion, JointMotion.AnkleDorsiflexion];

    /// <summary>The mechanism with the joint that is not stated worked out; two that are not stated are named as missing.</summary>
    public static Mechanism Complete(Mechanism mechanism, Ledger ledger) => mechanism.Method != MomentMethod.FootReaction ? mechanism : mechanism with
    {
        Start = Complete(mechanism.Start, "start", ledger),
        End = Complete(mechanism.End, "end", ledger),
    };

    private static Posture Complete(Posture posture, string place, Ledger ledger)
    {
        var open = Joints.Where(joint => !posture.Degrees.ContainsKey(joint)).ToList();
        if (open.Count == 0)
        {
            return posture;
        }

        if (open.Count > 1 || !posture.Degrees.ContainsKey(JointMotion.TrunkPitch))
        {
            ledger.Lack($"{string.Join(" and ", open.Select(MotionWords.Of))} at the {place}", "Three of trunk pitch, hip, knee and ankle would make the load profile computable; the fourth follows.");
            return posture;
        }

        var degrees = Missing(posture, open[0]);
        ledger.Use($"{MotionWords.Of(open[0])} at the {place}, from the other three", "°", degrees, InputOrigin.Derived);
        return posture.With(open[0], degrees);
    }

    private static double Missing(Posture posture, JointMotion joint)
    {
        var (pitch, hip, knee, ankle) = (posture[JointMotion.TrunkPitch], posture[JointMotion.HipFlexion], posture[JointMotion.KneeFlexion], posture[JointMotion.AnkleDorsiflexion]);
        return joint switch
        {
            JointMotion.HipFlexion => pitch - ankle + knee,
            JointMotion.KneeFlexion => ankle + hip - pitch,
            _ => pitch + knee - hip,
        };
    }
}
