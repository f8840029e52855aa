using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using ScoreRules.Mechanics.Statics.Preparing;

namespace ScoreRules.Mechanics.Statics.Strains;

/// <summary>
/// Moment at the level of the last lumbar disc (L5/S1). The disc lies 0.18 of hip to shoulder above the hip; above it are head,
/// arms, trunk less a pelvis of 0.142 m centred halfway (Winter 2009, both from memory).
/// </summary>
public static class SpineStrain
{
    /// <summary>Disc above the hip, fraction of hip to shoulder.</summary>
    public const double DiscHeight = 0.18;

    /// <summary>Mass between hip and disc, fraction of body mass.</summary>
    public const double PelvisMass = 0.142;

    /// <summary>
    /// Greatest moment that bends the trunk over the lifting phase, N m, both sides together: weight above the disc, and the load
    /// at hands or shoulders. 0 where a pad carries the trunk. Null when forces are unknown or the load does not pass through the trunk.
    /// </summary>
    /// <param name="mechanism">The movement.</param>
    public static double? Peak(Mechanism mechanism)
    {
        if (mechanism.IsTrunkSupported)
        {
            return 0;
        }

        if (mechanism.Resistance is Resistance.Cam or Resistance.Sled || mechanism.LoadPoint == LoadPoint.Body || mechanism.Method == MomentMethod.OpenLeg)
        {
            return null;
        }

        return Settled.Of(mechanism) is { } setup
            ? Enumerable.Range(0, Curves.MomentCurve.Steps).Max(step => At(setup, JointAngles.Between(setup.Start, setup.End, (double)step / (Curves.MomentCurve.Steps - 1))))
            : null;
    }

    private static double At(Setup setup, in JointAngles angles)
    {
        var trunk = TrunkOf(setup, angles);
        var disc = DiscHeight * setup.Body.TrunkMetres * trunk.Y;
        var shoulder = setup.Body.TrunkMetres * trunk.Y;
        var above = AboveDisc(setup.Body);
        var weight = (above.Metres * trunk.Y - disc).Cross(above.Kilograms * BodyConstants.Gravity * Vector3.Down);
        return (weight + Load(setup, angles, shoulder, disc)).Length;
    }

    private static Vector3 Load(Setup setup, in JointAngles angles, Vector3 shoulder, Vector3 disc)
    {
        var sides = setup.Mechanism.SharedBy;
        if (setup.Mechanism.Method is MomentMethod.OpenArm or MomentMethod.InLine)
        {
            var point = Places.LoadPoint(setup, angles);
            return (shoulder + point - disc).Cross(sides * setup.Load.At(point));
        }

        var held = setup.Mechanism.LoadPoint switch
        {
            LoadPoint.Pelvis or LoadPoint.Thigh or LoadPoint.Shin or LoadPoint.Foot => disc,
            LoadPoint.Trunk => TrunkOverHips.HeldAgainstTrunk * shoulder,
            _ => shoulder,
        };
        return (held - disc).Cross(sides * setup.LoadNewtons * Vector3.Down);
    }

    private static Rotation TrunkOf(Setup setup, in JointAngles angles) => setup.Mechanism.Method == MomentMethod.FootReaction
        ? Rotation.OfTrunk(StandingChain.TrunkPitch(angles), 0)
        : Rotation.OfTrunk(angles[JointMotion.TrunkPitch], angles[JointMotion.TrunkRoll]);

    private static PointMass AboveDisc(BodyDimensions body)
    {
        var all = BodyLumps.HeadArmsTrunk(body);
        var pelvis = new PointMass(PelvisMass * body.Person.MassKilograms, DiscHeight / 2 * body.TrunkMetres);
        return all + (pelvis with { Kilograms = -pelvis.Kilograms });
    }
}
