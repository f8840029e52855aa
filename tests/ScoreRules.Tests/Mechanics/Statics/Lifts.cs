using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Loads;
using Shouldly;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Plain movements to work out; angles in degrees.</summary>
internal static class Lifts
{
    public static Posture Posture(params ReadOnlySpan<(JointMotion Motion, double Degrees)> angles)
    {
        var posture = ScoreRules.Mechanics.Bodies.Posture.Anatomical;
        foreach (var (motion, degrees) in angles)
        {
            posture = posture.With(motion, degrees);
        }

        return posture;
    }

    public static Mechanism Curl(Resistance resistance, double upperArm, double from = 0, double to = 130, double trunkPitch = 0) => Lift(
        MomentMethod.OpenArm, JointMotion.ElbowFlexion, resistance, LoadPoint.Hand,
        Posture((JointMotion.TrunkPitch, trunkPitch), (JointMotion.ShoulderFlexion, upperArm + trunkPitch), (JointMotion.ElbowFlexion, from)),
        Posture((JointMotion.TrunkPitch, trunkPitch), (JointMotion.ShoulderFlexion, upperArm + trunkPitch), (JointMotion.ElbowFlexion, to)));

    public static Mechanism LateralRaise(Resistance resistance) => Lift(
        MomentMethod.OpenArm, JointMotion.ShoulderAbduction, resistance, LoadPoint.Hand,
        Posture((JointMotion.ShoulderAbduction, 0)), Posture((JointMotion.ShoulderAbduction, 90)));

    public static Mechanism Squat(double shank, double knee, double hip, double kilograms) => Lift(
        MomentMethod.FootReaction, JointMotion.KneeFlexion, new Resistance.Weight(kilograms), LoadPoint.Shoulders,
        Posture((JointMotion.AnkleDorsiflexion, shank), (JointMotion.KneeFlexion, knee), (JointMotion.HipFlexion, hip)),
        Posture((JointMotion.AnkleDorsiflexion, 0), (JointMotion.KneeFlexion, 0), (JointMotion.HipFlexion, 0)));

    public static Mechanism Hinge(Resistance resistance, LoadPoint point, double pitchOverHip = 0) => Lift(
        MomentMethod.TrunkOverHips, JointMotion.HipFlexion, resistance, point,
        Posture((JointMotion.HipFlexion, 90), (JointMotion.KneeFlexion, 20), (JointMotion.TrunkPitch, 90 + pitchOverHip)),
        Posture((JointMotion.HipFlexion, 0), (JointMotion.KneeFlexion, 20), (JointMotion.TrunkPitch, pitchOverHip)));

    /// <summary>From hips 45 below the horizontal to level, shanks upright all the way: the drop is half the hip flexion.</summary>
    public static Mechanism Thrust(double kilograms) => Lift(
        MomentMethod.Bridge, JointMotion.HipFlexion, new Resistance.Weight(kilograms), LoadPoint.Pelvis,
        Posture((JointMotion.HipFlexion, 90), (JointMotion.KneeFlexion, 135), (JointMotion.TrunkPitch, -45)),
        Posture((JointMotion.HipFlexion, 0), (JointMotion.KneeFlexion, 90), (JointMotion.TrunkPitch, -90)));

    public static Mechanism Nordic() => Lift(
        MomentMethod.BodyOverKnees, JointMotion.KneeFlexion, new Resistance.BodyWeight(0), LoadPoint.Body,
        Posture((JointMotion.TrunkPitch, 90), (JointMotion.KneeFlexion, 0)), Posture((JointMotion.TrunkPitch, 0), (JointMotion.KneeFlexion, 90)));

    public static Mechanism Calf(BallOfFoot ball, double from = 20, double to = -20) => Lift(
        MomentMethod.CalfLever, JointMotion.AnkleDorsiflexion, new Resistance.BodyWeight(0), LoadPoint.Body,
        Posture((JointMotion.AnkleDorsiflexion, from)), Posture((JointMotion.AnkleDorsiflexion, to))) with
    { BallOfFoot = ball };

    public static Mechanism Lift(MomentMethod method, JointMotion working, Resistance resistance, LoadPoint point, Posture start, Posture end)
    {
        ImmutableArray<JointMotion> moving = [.. start.Degrees.Keys.Where(motion => start[motion] != end[motion]).OrderBy(motion => motion != working).ThenBy(motion => motion)];
        return new Mechanism { Start = start, End = end, Moving = moving, WorkingJoint = working, Method = method, Resistance = resistance, LoadPoint = point };
    }

    public static MomentCurve CurveOf(this Mechanism mechanism, int steps = MomentCurve.Steps) =>
        StaticSolver.Solve(mechanism, steps).Curve.ShouldNotBeNull();

    /// <summary>The point at an angle that is one of the curve's own steps.</summary>
    public static CurvePoint At(this MomentCurve curve, double degrees) => curve.Points.Single(point => Math.Abs(point.AngleDegrees - degrees) < 1e-9);
}
