using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using ScoreRules.Mechanics.Statics.Preparing;

namespace ScoreRules.Mechanics.Figures;

/// <summary>Figures of a body over a lifting phase, from the same angles and forces as the moments.</summary>
public static class FigureSweep
{
    /// <summary>Figures at evenly spaced steps from start to end.</summary>
    /// <param name="mechanism">The movement.</param>
    /// <param name="rest">How limbs lie that it says nothing about.</param>
    /// <param name="count">How many, 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2.</exception>
    public static ImmutableArray<BodyFigure> Of(Mechanism mechanism, RestPosition rest, int count = 3)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 2);
        var whole = StandingPosture.Complete(mechanism, new Ledger());
        var (setup, body) = (Settled.Of(whole), new BodyDimensions(whole.Person));
        return [.. Enumerable.Range(0, count).Select(step => At(whole, setup, body, rest, (double)step / (count - 1)))];
    }

    private static BodyFigure At(Mechanism mechanism, Setup? setup, BodyDimensions body, RestPosition rest, double part)
    {
        var stated = JointAngles.Between(JointAngles.Of(mechanism.Start), JointAngles.Of(mechanism.End), part);
        var angles = RestingLimbs.Complete(mechanism, rest, stated);
        var limbs = Limbs.Of(mechanism, setup, body, angles, Pitch(mechanism, body, angles));
        var head = limbs.Shoulder + (BodyFigure.HeadHeight * body.Person.StatureMetres * limbs.LegPose.Trunk.Y);
        var figure = new BodyFigure(
            part, stated[mechanism.WorkingJoint], Limbs.Hip, limbs.Shoulder, head, limbs.LegPose.Trunk,
            new LimbLine([limbs.Shoulder, limbs.Elbow, limbs.Wrist, limbs.Grip], RestingLimbs.StatesArm(mechanism)),
            new LimbLine([Limbs.Hip, limbs.Knee, limbs.Ankle, limbs.Heel, limbs.Toes], RestingLimbs.StatesLeg(mechanism)),
            limbs.JointOf(mechanism.WorkingJoint).Place,
            LoadLines.Of(setup, mechanism, limbs))
        {
            IsOnBallOfFoot = mechanism is { Method: MomentMethod.CalfLever, Resistance: not Resistance.Sled },
        };
        return figure.Moved(-Still(mechanism, limbs));
    }

    private static double Pitch(Mechanism mechanism, BodyDimensions body, in JointAngles angles) => mechanism.Method switch
    {
        MomentMethod.FootReaction => StandingChain.TrunkPitch(angles),
        MomentMethod.Bridge when mechanism.WorkingJoint == JointMotion.KneeFlexion =>
            Bridge.PitchFor(body, angles, mechanism.FootLineMetres ?? BridgeSupport.HeelMetres, mechanism.FootSupportMetres ?? BridgeSupport.BallMetres),
        _ => angles[JointMotion.TrunkPitch],
    };

    // What stays put while the rest moves.
    private static Vector3 Still(Mechanism mechanism, Limbs limbs) => mechanism switch
    {
        { Method: MomentMethod.FootReaction or MomentMethod.TrunkOverHips } => limbs.Ankle,
        { Method: MomentMethod.CalfLever, Resistance: not Resistance.Sled } => limbs.Ball,
        { Method: MomentMethod.Bridge } => limbs.Shoulder,
        { Method: MomentMethod.BodyOverKnees } => limbs.Knee,
        { Method: MomentMethod.OpenArm or MomentMethod.InLine, LoadPoint: LoadPoint.Body } => limbs.Grip,
        _ => Limbs.Hip,
    };
}
