using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Whether a foot follows its track, and reaches its support.</summary>
internal static class TrackChecks
{
    /// <summary>Difference between foot path and track that is taken for rounding, degrees.</summary>
    public const double PathTolerance = 10;

    public static IEnumerable<MechanicsFinding> Of(Setup setup) => [.. Path(setup), .. Reach(setup)];

    private static IEnumerable<MechanicsFinding> Path(Setup setup)
    {
        if (setup.Mechanism is not { Method: MomentMethod.Sled, Resistance: Resistance.Sled { SlopeDegrees: { } slope } })
        {
            yield break;
        }

        var (first, last) = (Ankle(setup, setup.Start), Ankle(setup, setup.End));
        var path = (last - first) with { Z = 0 };
        var away = -SledPush.TowardsHips(slope, -last);
        var off = Degrees.Atan2(path.Cross(away).Length, path.Dot(away));
        if (off > PathTolerance)
        {
            yield return Warn(
                FindingKind.FootPath,
                $"The ankle leaves a track of {Number(slope)}° by {Number(off)}° between start and end.",
                "Change hip or knee flexion or the trunk pitch so that the foot moves along the track.");
        }
    }

    private static IEnumerable<MechanicsFinding> Reach(Setup setup)
    {
        if (setup.Mechanism is not { Method: MomentMethod.Bridge, FootSupportMetres: { } height })
        {
            yield break;
        }

        var line = setup.Mechanism.FootLineMetres ?? BridgeSupport.HeelMetres;
        var reach = Math.Min(Bridge.ShouldersToFoot(setup.Body, setup.Start, line).Length, Bridge.ShouldersToFoot(setup.Body, setup.End, line).Length);
        if (Math.Abs(height) > reach)
        {
            yield return Refuse(
                FindingKind.Range,
                $"The foot cannot be {Number(Math.Abs(height))} m from the height of the shoulders: they are only {Number(reach)} m apart in this posture.",
                "State a lower support, or less knee flexion.");
        }
    }

    private static Vector3 Ankle(Setup setup, in JointAngles angles) => LegPose.Of(setup.Body, angles).Ankle;
}
