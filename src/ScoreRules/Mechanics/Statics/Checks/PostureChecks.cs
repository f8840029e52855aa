using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Whether posture, load and floor fit together.</summary>
internal static class PostureChecks
{
    /// <summary>Difference of a chain sum that is taken for rounding, degrees.</summary>
    public const double ChainTolerance = 5;

    /// <summary>Lean of a hanging arm that is taken for rounding, degrees.</summary>
    public const double HangTolerance = 10;

    public static IEnumerable<MechanicsFinding> Of(Setup setup) =>
        [.. Hanging(setup), .. Chain(setup), .. Balance.Check(setup), .. TrackChecks.Of(setup), .. PulleyChecks.Of(setup)];

    // Only arms that begin near vertical and nearly straight hang; a pad, a bent elbow or a cable holds them elsewhere.
    private static IEnumerable<MechanicsFinding> Hanging(Setup setup)
    {
        var (angles, mechanism) = (setup.Start, setup.Mechanism);
        var room = angles[JointMotion.ShoulderFlexion] - angles[JointMotion.TrunkPitch];
        var hangs = mechanism is { Resistance: Resistance.Weight, LoadPoint: LoadPoint.Hand, Method: MomentMethod.OpenArm, IsUpperArmSupported: false }
            && angles[JointMotion.ElbowFlexion] <= 15 && angles[JointMotion.ShoulderHorizontalAdduction] == 0 && angles[JointMotion.TrunkRoll] == 0;
        if (hangs && Math.Abs(room) is > HangTolerance and <= 45)
        {
            yield return Warn(
                FindingKind.HangingWeight,
                $"A free weight hangs straight down, but the upper arm begins {Number(room)}° from vertical in the room.",
                $"Shoulder flexion less trunk pitch must be 0 where the weight hangs: state shoulder flexion {Number(angles[JointMotion.TrunkPitch])}°, or say that a pad carries the upper arm.",
                JointMotion.ShoulderFlexion);
        }
    }

    private static IEnumerable<MechanicsFinding> Chain(Setup setup)
    {
        if (setup.Mechanism.Method != MomentMethod.FootReaction)
        {
            yield break;
        }

        foreach (var (name, posture, angles) in new[] { ("start", setup.Mechanism.Start, setup.Start), ("end", setup.Mechanism.End, setup.End) })
        {
            var sum = StandingChain.TrunkPitch(angles);
            if (posture.Degrees.TryGetValue(JointMotion.TrunkPitch, out var pitch) && Math.Abs(pitch - sum) > ChainTolerance)
            {
                yield return Warn(
                    FindingKind.ChainSum,
                    $"On flat feet the trunk pitch at the {name} must be {Number(sum)}°, but {Number(pitch)}° is stated.",
                    "Trunk pitch = ankle dorsiflexion - knee flexion + hip flexion; change one of the four. The curve is worked out with the joints as stated.",
                    JointMotion.TrunkPitch);
            }
        }
    }
}
