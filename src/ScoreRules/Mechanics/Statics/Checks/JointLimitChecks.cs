using ScoreRules.Mechanics.Bodies;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Whether joints go as far as a movement says. Beyond the widest source is refused; past the usual value or close to the widest is a warning.</summary>
internal static class JointLimitChecks
{
    /// <summary>So close to the widest value few people go, degrees.</summary>
    public const double Close = 10;

    public static IEnumerable<MechanicsFinding> Of(Mechanism mechanism) =>
        new[] { (At: "start", mechanism.Start), (At: "end", mechanism.End) }
            .SelectMany(moment => Of(moment.Item2, IsFootLoaded(mechanism)))
            .OrderByDescending(finding => finding.Severity)
            .DistinctBy(finding => finding.Headline, StringComparer.Ordinal);

    private static IEnumerable<MechanicsFinding> Of(Posture posture, bool isFootLoaded)
    {
        var limits = JointLimits.Single.Add(JointLimits.Ankle(isFootLoaded, posture[JointMotion.KneeFlexion]));
        var single = limits.Where(limit => posture.Degrees.ContainsKey(limit.Motion)).Select(limit => Of(limit, posture[limit.Motion])).OfType<MechanicsFinding>();
        return [.. single, .. HipWithKnee(posture)];
    }

    private static MechanicsFinding? Of(JointLimit limit, double degrees)
    {
        var (word, left) = (MotionWords.Of(limit.Motion), limit.LeftOf(degrees));
        if (left < 0)
        {
            return Refuse(
                FindingKind.JointLimit,
                $"No joint does {word} {Number(degrees)}°: the widest value is {Number(limit.WidestDegrees)}° ({limit.Source}).",
                "Joint angles are measured segment against segment; an angle of a pad or of the room belongs into trunk pitch.",
                limit.Motion);
        }

        return limit.IsPastUsual(degrees) || (left < Close && degrees != limit.UsualDegrees && IsLargeSide(limit, degrees))
            ? Warn(
                FindingKind.JointLimit,
                $"Few people reach {word} {Number(degrees)}°: usual is {Number(limit.UsualDegrees)}°, the widest value {Number(limit.WidestDegrees)}° ({limit.Source}).",
                limit.Motion == JointMotion.HipFlexion ? "Part of this is the pelvis turning; check the angle." : "Check the angle.",
                limit.Motion)
            : null;
    }

    // An extended elbow or knee at exactly or above its zero is no rarity, though the limit is close.
    private static bool IsLargeSide(JointLimit limit, double degrees) => limit.UsualDegrees != 0 || degrees < 0;

    private static IEnumerable<MechanicsFinding> HipWithKnee(Posture posture)
    {
        var (hip, knee) = (posture[JointMotion.HipFlexion], posture[JointMotion.KneeFlexion]);
        var most = JointLimits.HipWithKnee(knee);
        if (posture.Degrees.ContainsKey(JointMotion.KneeFlexion) && hip > most)
        {
            yield return Refuse(
                FindingKind.JointLimit,
                $"The hamstrings do not allow hip flexion {Number(hip)}° with knee flexion {Number(knee)}°: about {Number(most)}° is the most (from memory).",
                "Bend the knee more or flex the hip less.",
                JointMotion.HipFlexion);
        }
    }

    private static bool IsFootLoaded(Mechanism mechanism) => mechanism.Method is MomentMethod.FootReaction or MomentMethod.Sled
        or MomentMethod.CalfLever or MomentMethod.TrunkOverHips or MomentMethod.BodyOverKnees or MomentMethod.Bridge;
}
