using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>
/// Shoulders and feet are supported, both push straight up. The feet carry F = sum of w (x - x_shoulder) / (x_foot - x_shoulder);
/// the moment is that of F and of the leg's own weight about the working joint.
/// </summary>
internal sealed class Bridge(Setup setup, double footLine, double? footSupport) : IMomentMethod
{
    private readonly PointMass upper = BodyLumps.UpperBody(setup.Body);

    public MomentParts At(in JointAngles angles)
    {
        var pitch = footSupport is { } height ? PitchFor(setup.Body, angles, footLine, height) : angles[JointMotion.TrunkPitch];
        var pose = LegPose.Of(setup.Body, angles, Rotation.OfTrunk(pitch, 0));
        var about = LegJoints.At(pose, setup.Working, setup.Sense);
        var foot = pose.OnFoot(footLine, setup.Body.AnkleMetres);
        var shoulder = setup.Body.TrunkMetres * pose.Trunk.Y;
        var lever = foot.X - shoulder.X;
        var byLoad = setup.LoadNewtons * -shoulder.X / lever;
        var byBody = BodyMoment(pose, shoulder.X) / lever / setup.Mechanism.SharedBy;
        return new MomentParts(
            about.Of(foot, -byLoad * Vector3.Down), about.Of(foot, -byBody * Vector3.Down), LegJoints.Weights(pose, setup.Body, about, setup.Working));
    }

    /// <summary>Trunk pitch that puts the foot at a height over the shoulders, degrees; the nearest one when it is out of reach.</summary>
    public static double PitchFor(BodyDimensions body, in JointAngles angles, double footLine, double height)
    {
        var reach = ShouldersToFoot(body, angles, footLine);
        var slope = Degrees.Asin(Math.Clamp(height / reach.Length, -1, 1));
        return Degrees.Atan2(reach.Y, reach.X) - slope;
    }

    /// <summary>From shoulder to foot with the trunk upright, m.</summary>
    public static Vector3 ShouldersToFoot(BodyDimensions body, in JointAngles angles, double footLine)
    {
        var pose = LegPose.Of(body, angles, Rotation.None);
        var path = pose.OnFoot(footLine, body.AnkleMetres) - new Vector3(0, body.TrunkMetres, 0);
        return path with { Z = 0 };
    }

    private double BodyMoment(in LegPose pose, double shoulder)
    {
        var body = setup.Body;
        var legs = (body.Thigh.Kilograms * (pose.ThighCentre.X - shoulder))
            + (body.Shank.Kilograms * (pose.ShankCentre.X - shoulder))
            + (body.Foot.Kilograms * (pose.FootCentre.X - shoulder));
        return BodyConstants.Gravity * ((upper.Kilograms * ((upper.Metres * pose.Trunk.Y.X) - shoulder)) + (2 * legs));
    }
}
