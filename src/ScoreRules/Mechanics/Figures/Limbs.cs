using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Methods;
using static ScoreRules.Mechanics.Bodies.JointMotion;

namespace ScoreRules.Mechanics.Figures;

/// <summary>Arm, trunk and leg put together, the hip joint at the origin. m.</summary>
/// <param name="Body">Whose.</param>
/// <param name="ArmPose">The arm, seen from the shoulder.</param>
/// <param name="LegPose">The leg, seen from the hip.</param>
/// <param name="Forearm">Direction of the forearm from the elbow, length 1.</param>
internal sealed record Limbs(BodyDimensions Body, ArmPose ArmPose, LegPose LegPose, Vector3 Forearm)
{
    public static Vector3 Hip => Vector3.Zero;

    public Vector3 Shoulder => Body.TrunkMetres * LegPose.Trunk.Y;

    public Vector3 Elbow => Shoulder + ArmPose.Elbow;

    public Vector3 Wrist => Elbow + (Body.Forearm.Metres * Forearm);

    public Vector3 Grip => Elbow + ((Body.Forearm.Metres + ArmPose.GripMetres) * Forearm);

    public Vector3 Knee => LegPose.Knee;

    public Vector3 Ankle => LegPose.Ankle;

    public Vector3 Ball => LegPose.OnFoot(BallOfFoot.Default.Ahead, BallOfFoot.Default.Below);

    public Vector3 Heel => LegPose.OnFoot(-BodyConstants.HeelToAnkle * Body.Foot.Metres, Body.AnkleMetres);

    public Vector3 Toes => LegPose.OnFoot((1 - BodyConstants.HeelToAnkle) * Body.Foot.Metres, Body.AnkleMetres);

    /// <summary>Place and axis of a joint in the room.</summary>
    public (Vector3 Place, Vector3 Axis) JointOf(JointMotion motion)
    {
        if (ArmJoints.Has(motion))
        {
            var arm = ArmJoints.At(ArmPose, motion, 1);
            return (Shoulder + arm.Joint, arm.Axis);
        }

        var leg = LegJoints.At(LegPose, motion, 1);
        return (leg.Joint, leg.Axis);
    }

    /// <summary>The body in a posture on a trunk of that pitch.</summary>
    public static Limbs Of(Mechanism mechanism, Setup? setup, BodyDimensions body, in JointAngles angles, double pitch)
    {
        var trunk = Rotation.OfTrunk(pitch, angles[TrunkRoll]);
        var arm = ArmPose.Of(body, angles, trunk);
        var forearm = mechanism.Method == MomentMethod.InLine ? InLine(mechanism, setup, arm.Elbow) : (arm.Wrist - arm.Elbow).Unit();
        return new Limbs(body, arm, LegPose.Of(body, angles, trunk), forearm);
    }

    // Who pulls has the hand where the load pulls to; who presses has it on the other side of the elbow.
    private static Vector3 InLine(Mechanism mechanism, Setup? setup, Vector3 elbow)
    {
        var force = setup is null ? Vector3.Down : setup.Load.At(elbow) + setup.Support.At(elbow);
        var presses = mechanism.End[ElbowFlexion] < mechanism.Start[ElbowFlexion];
        return (presses ? -1 : 1) * force.Unit();
    }
}
