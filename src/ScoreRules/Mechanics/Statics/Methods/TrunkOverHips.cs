using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>
/// The trunk turns over the hips: M = g (W L + m d) sin(pitch), with the load W at the shoulders (a bar in the hands hangs
/// under them) and head, arms and trunk as one mass m.
/// </summary>
internal sealed class TrunkOverHips(Setup setup) : IMomentMethod
{
    /// <summary>A weight held against the trunk, fraction of hip to shoulder; assumed.</summary>
    public const double HeldAgainstTrunk = 0.8;

    private readonly PointMass upper = BodyLumps.HeadArmsTrunk(setup.Body);
    private readonly double lever = (setup.Mechanism.LoadPoint == LoadPoint.Trunk ? HeldAgainstTrunk : 1) * setup.Body.TrunkMetres;

    public MomentParts At(in JointAngles angles)
    {
        var trunk = Rotation.OfTrunk(angles[JointMotion.TrunkPitch], angles[JointMotion.TrunkRoll]);
        var about = new Opposition(Vector3.Zero, trunk.Z, setup.Sense).FromTrunkSide();
        return new MomentParts(
            about.Of(lever * trunk.Y, setup.LoadNewtons * Vector3.Down),
            0,
            about.OfWeight(upper.Metres * trunk.Y, upper.Kilograms) / setup.Mechanism.SharedBy);
    }
}
