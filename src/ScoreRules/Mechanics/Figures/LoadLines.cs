using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;

namespace ScoreRules.Mechanics.Figures;

/// <summary>The line along which the load of a movement pulls, in one posture.</summary>
internal static class LoadLines
{
    /// <summary>The line; null where what the movement states does not give it.</summary>
    /// <param name="setup">The mechanism with its loads; null when an input is missing.</param>
    /// <param name="mechanism">The movement.</param>
    /// <param name="limbs">The body.</param>
    public static LoadLine? Of(Setup? setup, Mechanism mechanism, Limbs limbs) =>
        Line(setup, mechanism, limbs) is { } line ? line with { HasLever = ActsOnLimb(mechanism) } : null;

    private static bool ActsOnLimb(Mechanism mechanism) =>
        mechanism is { Method: MomentMethod.OpenArm or MomentMethod.OpenLeg, LoadPoint: not LoadPoint.Body, Resistance: not Resistance.Cam } or { Method: MomentMethod.TrunkOverHips };

    private static LoadLine? Line(Setup? setup, Mechanism mechanism, Limbs limbs) => mechanism switch
    {
        { Resistance: Resistance.Cam } => Pad(mechanism, limbs),
        { Method: MomentMethod.Sled } => Platform(limbs),
        { Resistance: Resistance.Sled } => Platform(limbs),
        { LoadPoint: LoadPoint.Body } or { Resistance: Resistance.BodyWeight { AddedKilograms: 0 } } => new LoadLine(0.5 * (Limbs.Hip + limbs.Shoulder), Vector3.Down, LoadKind.BodyWeight),
        { Resistance: Resistance.Weight or Resistance.BodyWeight } => new LoadLine(Point(mechanism, limbs), Vector3.Down, LoadKind.Weight),
        _ => Towards(setup, mechanism, limbs),
    };

    // Pulleys are measured with shoulder or hip as the origin.
    private static LoadLine? Towards(Setup? setup, Mechanism mechanism, Limbs limbs)
    {
        var point = Point(mechanism, limbs);
        var origin = ArmJoints.Has(mechanism.WorkingJoint) ? limbs.Shoulder : Limbs.Hip;
        var force = setup?.Load.At(point - origin).Unit() ?? Vector3.Zero;
        return force == Vector3.Zero ? null : new LoadLine(point, force, mechanism.Resistance is Resistance.Band ? LoadKind.Band : LoadKind.Cable);
    }

    // The pad presses square to the lever from joint to pad, against the target.
    private static LoadLine? Pad(Mechanism mechanism, Limbs limbs)
    {
        var sense = Math.Sign(mechanism.End[mechanism.WorkingJoint] - mechanism.Start[mechanism.WorkingJoint]);
        var (joint, axis) = limbs.JointOf(mechanism.WorkingJoint);
        var point = Point(mechanism, limbs);
        var press = (-sense * axis.Cross(point - joint)).Unit();
        return press == Vector3.Zero ? null : new LoadLine(point, press, LoadKind.Pad);
    }

    private static LoadLine Platform(Limbs limbs) => new(limbs.Ball, (Limbs.Hip - limbs.Ball).Unit(), LoadKind.Platform);

    private static Vector3 Point(Mechanism mechanism, Limbs limbs) => mechanism.LoadPoint switch
    {
        LoadPoint.Hand => limbs.Grip,
        LoadPoint.UpperArm => limbs.Elbow,
        LoadPoint.Shoulders or LoadPoint.HandsAtChest => limbs.Shoulder,
        LoadPoint.Trunk => Limbs.Hip + (TrunkOverHips.HeldAgainstTrunk * (limbs.Shoulder - Limbs.Hip)),
        LoadPoint.Pelvis => Limbs.Hip,
        LoadPoint.Thigh => limbs.Knee,
        LoadPoint.Foot when mechanism.WorkingJoint == JointMotion.AnkleDorsiflexion => limbs.Ball,
        LoadPoint.Body => Limbs.Hip,
        _ => limbs.Ankle,
    };
}
