using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;
using static ScoreRules.Mechanics.Bodies.JointMotion;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>130 lifts of six plain kinds, each with its own angles: as many as the shared catalogue has, and as mixed.</summary>
internal static class SomeLifts
{
    /// <summary>How many.</summary>
    public const int Count = 130;

    /// <summary>All lifts; always the same.</summary>
    public static ImmutableArray<Mechanism> All() => [.. Enumerable.Range(0, Count).Select(at => Make(at % 6, at / 6 * 2))];

    private static Mechanism Make(int kind, double degrees) => kind switch
    {
        0 => Lift(MomentMethod.OpenArm, LoadPoint.Hand, new Resistance.Weight(10), ElbowFlexion, 5, 130, (ShoulderFlexion, degrees), (ForearmSupination, 80)),
        1 => Lift(MomentMethod.OpenArm, LoadPoint.Hand, new Resistance.Cable(100, new Vector3(0.4, 1, 0)), ElbowFlexion, 110, 0, (ShoulderFlexion, degrees), (ForearmSupination, 0)),
        2 => Lift(MomentMethod.TrunkOverHips, LoadPoint.Shoulders, new Resistance.Weight(40), HipFlexion, 90, 0, (KneeFlexion, 10 + (degrees / 4))),
        3 => Lift(MomentMethod.OpenArm, LoadPoint.Hand, new Resistance.Weight(8), ShoulderAbduction, 5, 90, (ElbowFlexion, degrees / 2), (ShoulderFlexion, degrees / 4)),
        4 => Lift(MomentMethod.CalfLever, LoadPoint.Body, new Resistance.BodyWeight(0), AnkleDorsiflexion, 20, -35, (KneeFlexion, degrees)),
        _ => Lift(MomentMethod.OpenLeg, LoadPoint.Shin, new Resistance.Cable(150, new Vector3(0.8, -0.45, 0)), KneeFlexion, 5, 110, (HipFlexion, degrees / 2), (TrunkPitch, 20)),
    };

    private static Mechanism Lift(MomentMethod method, LoadPoint point, Resistance resistance, JointMotion working, double from, double to, params ReadOnlySpan<(JointMotion Motion, double Degrees)> held)
    {
        var posture = Posture.Anatomical;
        foreach (var (motion, degrees) in held)
        {
            posture = posture.With(motion, degrees);
        }

        return new Mechanism
        {
            Start = posture.With(working, from),
            End = posture.With(working, to),
            Moving = [working],
            WorkingJoint = working,
            Method = method,
            Resistance = resistance,
            LoadPoint = point,
        };
    }
}
