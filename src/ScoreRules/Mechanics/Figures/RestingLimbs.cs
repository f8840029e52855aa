using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;
using static ScoreRules.Mechanics.Bodies.JointMotion;

namespace ScoreRules.Mechanics.Figures;

/// <summary>Angles of limbs that a movement does not state, so that a whole body can be drawn. For looks, no source.</summary>
internal static class RestingLimbs
{
    public static bool StatesArm(Mechanism mechanism) => States(mechanism, ShoulderFlexion, ShoulderAbduction, ShoulderHorizontalAdduction, ElbowFlexion);

    public static bool StatesLeg(Mechanism mechanism) => States(mechanism, HipFlexion, HipAbduction, KneeFlexion);

    /// <summary>The same angles with those of limbs at rest put in.</summary>
    public static JointAngles Complete(Mechanism mechanism, RestPosition rest, in JointAngles angles)
    {
        var whole = StatesLeg(mechanism) ? OnFloor(mechanism, angles) : Leg(rest, angles);
        return StatesArm(mechanism) ? whole : Arm(mechanism, rest, whole);
    }

    private static bool States(Mechanism mechanism, params ReadOnlySpan<JointMotion> motions)
    {
        var states = false;
        foreach (var motion in motions)
        {
            states |= mechanism.Start.Degrees.ContainsKey(motion);
        }

        return states;
    }

    // A standing foot lies flat where nobody states the ankle.
    private static JointAngles OnFloor(Mechanism mechanism, in JointAngles angles) =>
        mechanism.Method == MomentMethod.TrunkOverHips && !mechanism.Start.Degrees.ContainsKey(AnkleDorsiflexion) ? angles.With(AnkleDorsiflexion, StandingChain.ShankLean(angles)) : angles;

    private static JointAngles Leg(RestPosition rest, in JointAngles angles)
    {
        var level = angles[TrunkPitch] + 90;
        var (hip, knee) = rest switch
        {
            RestPosition.Seated => (level, 90.0),
            RestPosition.LongSitting => (level, 0),
            RestPosition.Supine => (0, level + 90),
            RestPosition.Prone => (0, 0),
            RestPosition.Kneeling => (angles[TrunkPitch], 90),
            _ => (angles[TrunkPitch], 0),
        };
        return angles.With(HipFlexion, hip).With(KneeFlexion, Math.Clamp(knee, 0, 130));
    }

    private static JointAngles Arm(Mechanism mechanism, RestPosition rest, in JointAngles angles)
    {
        var pitch = angles[TrunkPitch];
        var (shoulder, elbow) = (mechanism.LoadPoint, rest) switch
        {
            (LoadPoint.Shoulders, _) => (-35.0, 150.0),
            (LoadPoint.HandsAtChest or LoadPoint.Trunk, _) => (35, 135),
            (_, RestPosition.Seated) => (pitch + 5, 55),
            (_, RestPosition.Supine or RestPosition.Prone) => (0, 0),
            _ => (pitch, 5),
        };
        return angles.With(ShoulderFlexion, shoulder).With(ElbowFlexion, elbow);
    }
}
