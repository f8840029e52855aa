using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using ScoreRules.Mechanics.Statics.Preparing;

namespace ScoreRules.Mechanics.Statics.Strains;

/// <summary>What the wrist has to hold.</summary>
public static class WristStrain
{
    /// <summary>
    /// Greatest moment about the wrist over the lifting phase, N m: |(grip - wrist) x F + (hand centre - wrist) x W|, with F the
    /// force in the hand. Null when nothing is held in the hand or the movement has no curve.
    /// </summary>
    /// <param name="mechanism">The movement.</param>
    public static double? Peak(Mechanism mechanism)
    {
        if (mechanism.LoadPoint is not (LoadPoint.Hand or LoadPoint.Body) || mechanism.Method != MomentMethod.OpenArm || mechanism.Resistance is Resistance.Cam)
        {
            return null;
        }

        return Settled.Of(mechanism) is { } setup
            ? Enumerable.Range(0, Curves.MomentCurve.Steps).Max(step => At(setup, JointAngles.Between(setup.Start, setup.End, (double)step / (Curves.MomentCurve.Steps - 1))))
            : null;
    }

    private static double At(Setup setup, in JointAngles angles)
    {
        var pose = ArmPose.Of(setup.Body, angles);
        var held = setup.Load.At(pose.Grip) + setup.Support.At(pose.Grip);
        var hand = setup.Body.Hand.Kilograms * BodyConstants.Gravity * Vector3.Down;
        return ((pose.Grip - pose.Wrist).Cross(held) + (pose.HandCentre - pose.Wrist).Cross(hand)).Length;
    }
}
