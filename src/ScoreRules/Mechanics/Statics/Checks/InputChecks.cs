using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>What must hold before anything is computed.</summary>
internal static class InputChecks
{
    public static IEnumerable<MechanicsFinding> Of(Mechanism mechanism) =>
        [.. NumberChecks.Of(mechanism), .. Ranges(mechanism), .. JointLimitChecks.Of(mechanism), .. Fit(mechanism)];

    private static IEnumerable<MechanicsFinding> Ranges(Mechanism mechanism)
    {
        var word = MotionWords.Of(mechanism.WorkingJoint);
        var (start, end) = (mechanism.Start[mechanism.WorkingJoint], mechanism.End[mechanism.WorkingJoint]);
        if (!mechanism.Moving.Contains(mechanism.WorkingJoint))
        {
            yield return Refuse(FindingKind.Range, $"The working joint does not move: no range of {word} is stated.", $"State where {word} begins and ends.", mechanism.WorkingJoint);
        }
        else if (Math.Abs(end - start) < 1e-9)
        {
            yield return Refuse(FindingKind.Range, $"The range of {word} is zero: it begins and ends at {Number(start)}°.", "State two different angles, or choose the joint that moves.", mechanism.WorkingJoint);
        }
        else if (mechanism.Target is { } side && (end > start) != (side == TargetSide.Raises))
        {
            yield return Refuse(
                FindingKind.Range,
                $"The range of {word} runs from {Number(start)}° to {Number(end)}°, but the target's muscles turn the joint the other way.",
                "State the lifting phase: swap start and end.",
                mechanism.WorkingJoint);
        }
    }

    private static IEnumerable<MechanicsFinding> Fit(Mechanism mechanism)
    {
        var arm = mechanism.Method is MomentMethod.OpenArm or MomentMethod.InLine;
        if (!Takes(mechanism.Method, mechanism.WorkingJoint))
        {
            yield return Refuse(
                FindingKind.Method,
                $"No moment about {MotionWords.Of(mechanism.WorkingJoint)} can be worked out for this kind of movement.",
                arm ? "Choose elbow or shoulder as the working joint." : "Choose a joint that this movement loads.");
        }

        if (!Takes(mechanism.Method, mechanism.Resistance))
        {
            yield return Refuse(
                FindingKind.Method,
                $"{Word(mechanism.Resistance)} is not modelled for this kind of movement.",
                "State a weight or body weight, or rate the load profile by hand.");
        }
    }

    private static bool Takes(MomentMethod method, JointMotion joint) => method switch
    {
        MomentMethod.OpenArm => ArmJoints.Has(joint),
        MomentMethod.InLine => ArmJoints.IsShoulder(joint),
        MomentMethod.TrunkOverHips => joint == JointMotion.HipFlexion,
        MomentMethod.BodyOverKnees => joint == JointMotion.KneeFlexion,
        MomentMethod.CalfLever => joint == JointMotion.AnkleDorsiflexion,
        MomentMethod.Bridge => joint is JointMotion.HipFlexion or JointMotion.KneeFlexion,
        _ => LegJoints.Has(joint),
    };

    private static bool Takes(MomentMethod method, Resistance resistance) => method switch
    {
        MomentMethod.OpenArm or MomentMethod.OpenLeg => resistance is not Resistance.Sled,
        MomentMethod.InLine => resistance is not Resistance.Sled,
        MomentMethod.Sled => resistance is Resistance.Sled,
        MomentMethod.CalfLever => resistance is Resistance.Weight or Resistance.BodyWeight or Resistance.Sled or Resistance.Cam,
        _ => resistance is Resistance.Weight or Resistance.BodyWeight or Resistance.Cam,
    };

    private static string Word(Resistance resistance) => resistance switch
    {
        Resistance.Cable => "A cable",
        Resistance.Band => "A band",
        Resistance.Sled => "A sled",
        Resistance.Cam => "A cam",
        Resistance.BodyWeight => "Body weight",
        _ => "A weight",
    };
}
