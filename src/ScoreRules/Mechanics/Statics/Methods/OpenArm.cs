using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>All forces beyond the joint of an arm: the load at the hand (or the elbow), and forearm, hand and upper arm.</summary>
internal sealed class OpenArm(Setup setup) : IMomentMethod
{
    public MomentParts At(in JointAngles angles)
    {
        var pose = ArmPose.Of(setup.Body, angles);
        var about = ArmJoints.At(pose, setup.Working, setup.Sense);
        var point = PointOf(pose, setup.Mechanism.LoadPoint);
        return new MomentParts(
            about.Of(point, setup.Load.At(point)),
            about.Of(point, setup.Support.At(point)),
            ArmJoints.Weights(pose, setup.Body, about, setup.Working));
    }

    public static Vector3 PointOf(in ArmPose pose, LoadPoint point) => point == LoadPoint.UpperArm ? pose.Elbow : pose.Grip;
}
