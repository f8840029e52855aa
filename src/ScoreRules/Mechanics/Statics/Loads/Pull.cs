using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Loads;

/// <summary>A force that may depend on where its point of application is.</summary>
internal abstract class Pull
{
    public static Pull None { get; } = new Constant(Vector3.Zero);

    /// <summary>Force on the body at a point of the room, N.</summary>
    public abstract Vector3 At(Vector3 point);

    /// <summary>The same force everywhere.</summary>
    internal sealed class Constant(Vector3 force) : Pull
    {
        public override Vector3 At(Vector3 point) => force;
    }

    /// <summary>A constant tension towards a pulley.</summary>
    internal sealed class ToPulley(double newtons, Vector3 pulley) : Pull
    {
        public override Vector3 At(Vector3 point) => newtons * (pulley - point).Unit();
    }

    /// <summary>A tension towards an anchor that depends on the distance.</summary>
    internal sealed class ToAnchor(BandLaw law, Vector3 anchor) : Pull
    {
        public BandLaw Law => law;

        public Vector3 Anchor => anchor;

        public override Vector3 At(Vector3 point) => law.Tension((anchor - point).Length) * (anchor - point).Unit();
    }
}
