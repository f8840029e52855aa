using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>All forces beyond the joint of a leg: the load at knee, ankle or ball of the foot, and the segments.</summary>
internal sealed class OpenLeg(Setup setup) : IMomentMethod
{
    public MomentParts At(in JointAngles angles)
    {
        var pose = LegPose.Of(setup.Body, angles);
        var about = LegJoints.At(pose, setup.Working, setup.Sense);
        var point = PointOf(pose, setup.Mechanism);
        return new MomentParts(about.Of(point, setup.Load.At(point)), 0, LegJoints.Weights(pose, setup.Body, about, setup.Working));
    }

    public static Vector3 PointOf(in LegPose pose, Mechanism mechanism)
    {
        if (mechanism.LoadPoint == LoadPoint.Thigh)
        {
            return pose.Knee;
        }

        var ball = mechanism.BallOfFoot ?? BallOfFoot.Default;
        return mechanism.WorkingJoint == JointMotion.AnkleDorsiflexion ? pose.OnFoot(ball.Ahead, ball.Below) : pose.Ankle;
    }
}
