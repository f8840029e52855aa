using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>
/// The body turns over the knees: with straight hips M = g m d sin(lean) with m, d all above the knees. The thigh leans by
/// trunk pitch less hip flexion.
/// </summary>
internal sealed class BodyOverKnees(Setup setup) : IMomentMethod
{
    private readonly PointMass thighs = BodyLumps.Thighs(setup.Body);
    private readonly PointMass upper = BodyLumps.UpperBody(setup.Body);

    public MomentParts At(in JointAngles angles)
    {
        var trunk = Rotation.OfTrunk(angles[JointMotion.TrunkPitch], 0);
        var thigh = Rotation.OfTrunk(angles[JointMotion.TrunkPitch] - angles[JointMotion.HipFlexion], 0);
        var about = new Opposition(Vector3.Zero, -thigh.Z, setup.Sense).FromTrunkSide();
        var hip = setup.Body.Thigh.Metres * thigh.Y;
        var load = setup.Mechanism.LoadPoint == LoadPoint.Pelvis ? hip : hip + (setup.Body.TrunkMetres * trunk.Y);
        var own = about.OfWeight(thighs.Metres * thigh.Y, thighs.Kilograms) + about.OfWeight(hip + (upper.Metres * trunk.Y), upper.Kilograms);
        return new MomentParts(about.Of(load, setup.LoadNewtons * Vector3.Down), 0, own / setup.Mechanism.SharedBy);
    }
}
