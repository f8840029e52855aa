using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>
/// The ball of the foot carries: M = F (0.13 cos a + 0.05 sin a), a = dorsiflexion less the forward lean of the shank. On a sled
/// the force runs along the shank, so a is the dorsiflexion. The foot's own weight is left out (under 1 % of body weight).
/// </summary>
internal sealed class CalfLever(Setup setup, BallOfFoot ball, bool isAlongShank) : IMomentMethod
{
    public MomentParts At(in JointAngles angles)
    {
        var pitch = angles[JointMotion.AnkleDorsiflexion] - (isAlongShank ? 0 : StandingChain.ShankLean(angles));
        var contact = Rotation.AboutZ(pitch).Of(new Vector3(ball.Ahead, -ball.Below, 0));
        var about = new Opposition(Vector3.Zero, Rotation.None.Z, setup.Sense);
        return new MomentParts(about.Of(contact, -setup.LoadNewtons * Vector3.Down), about.Of(contact, -setup.BodyNewtons * Vector3.Down), 0);
    }
}
