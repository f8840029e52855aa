using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>The platform pushes on the foot along the track, towards the hips.</summary>
internal sealed class SledPush(Setup setup, double footLine, Vector3 towardsHips) : IMomentMethod
{
    public MomentParts At(in JointAngles angles)
    {
        var pose = LegPose.Of(setup.Body, angles);
        var about = LegJoints.At(pose, setup.Working, setup.Sense);
        var platform = Contact(setup.Body, pose, footLine);
        return new MomentParts(
            about.Of(platform, setup.LoadNewtons * towardsHips),
            about.Of(platform, setup.BodyNewtons * towardsHips),
            LegJoints.Weights(pose, setup.Body, about, setup.Working));
    }

    public static Vector3 Contact(BodyDimensions body, in LegPose pose, double footLine) => pose.OnFoot(footLine, body.AnkleMetres);

    /// <summary>The track's direction that points from foot to hips at the end of the lift: one of the four ways a slope can face.</summary>
    /// <param name="slopeDegrees">Slope from the floor.</param>
    /// <param name="footToHip">From the foot to the hip, m.</param>
    public static Vector3 TowardsHips(double slopeDegrees, Vector3 footToHip)
    {
        var (sin, cos) = Degrees.SinCos(slopeDegrees);
        var (ahead, back) = (new Vector3(cos, sin, 0), new Vector3(-cos, sin, 0));
        var line = Math.Abs(ahead.Dot(footToHip)) >= Math.Abs(back.Dot(footToHip)) ? ahead : back;
        return line.Dot(footToHip) < 0 ? -line : line;
    }
}
