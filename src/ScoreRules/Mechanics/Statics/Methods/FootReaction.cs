using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>Standing on flat feet: load and body weight come back up from the ground at mid-foot; shank, foot and thigh weigh against it.</summary>
internal sealed class FootReaction(Setup setup, double footLine) : IMomentMethod
{
    /// <summary>Mid-foot ahead of the ankle, m; assumed, no source.</summary>
    public const double MidFootMetres = 0.07;

    public MomentParts At(in JointAngles angles)
    {
        var pose = PoseOnFlatFoot(setup.Body, angles);
        var about = LegJoints.At(pose, setup.Working, setup.Sense);
        var ground = pose.OnFoot(footLine, setup.Body.AnkleMetres);
        return new MomentParts(
            about.Of(ground, -setup.LoadNewtons * Vector3.Down),
            about.Of(ground, -setup.BodyNewtons * Vector3.Down),
            LegJoints.Weights(pose, setup.Body, about, setup.Working));
    }

    /// <summary>The leg with the trunk where a flat foot puts it.</summary>
    public static LegPose PoseOnFlatFoot(BodyDimensions body, in JointAngles angles) =>
        LegPose.Of(body, angles, Rotation.OfTrunk(StandingChain.TrunkPitch(angles), 0));
}
