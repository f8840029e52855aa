using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>The forearm lies in the line of the load, so the force acts at the elbow; forearm and hand lie on the same line.</summary>
internal sealed class InLine(Setup setup) : IMomentMethod
{
    public MomentParts At(in JointAngles angles)
    {
        var pose = ArmPose.Of(setup.Body, angles);
        var about = ArmJoints.At(pose, setup.Working, setup.Sense);
        var (load, support) = (setup.Load.At(pose.Elbow), setup.Support.At(pose.Elbow));
        var line = (load + support).Unit();
        var body = setup.Body;
        var limb = about.OfWeight(pose.UpperArmCentre, body.UpperArm.Kilograms)
            + about.OfWeight(pose.Elbow + (body.Forearm.CentreMetres * line), body.Forearm.Kilograms)
            + about.OfWeight(pose.Elbow + ((body.Forearm.Metres + body.Hand.CentreMetres) * line), body.Hand.Kilograms);
        return new MomentParts(about.Of(pose.Elbow, load), about.Of(pose.Elbow, support), limb);
    }
}
