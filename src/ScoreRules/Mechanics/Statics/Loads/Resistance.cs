using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Loads;

/// <summary>What makes the force. A number left out is null: it is assumed where only the size depends on it, else it is named as missing.</summary>
public abstract record Resistance
{
    private Resistance()
    {
    }

    /// <summary>A weight, free or on upright rails: a force straight down.</summary>
    /// <param name="Kilograms">What acts at one load point, kg, 0 or more; null takes the usual load for the point.</param>
    public sealed record Weight(double? Kilograms) : Resistance;

    /// <summary>A cable over a pulley: a constant pull towards it; friction is left out.</summary>
    /// <param name="Newtons">Tension, N, above 0; null takes 100 N.</param>
    /// <param name="Pulley">From the first moving joint in the start posture, room axes, m; null when not recorded.</param>
    public sealed record Cable(double? Newtons, Vector3? Pulley) : Resistance;

    /// <summary>An elastic band: a pull towards its anchor that depends on its length; hysteresis is left out.</summary>
    /// <param name="Law">Tension by length; null takes 100 N/m and a slack of 0.77 of the start length.</param>
    /// <param name="Anchor">From the first moving joint in the start posture, room axes, m; null when not recorded.</param>
    public sealed record Band(BandLaw? Law, Vector3? Anchor) : Resistance;

    /// <summary>A machine with a cam or a lever of its own: moment = m g R(angle), against the target at every angle.</summary>
    /// <param name="Kilograms">Stack, kg; null takes the usual load for the point.</param>
    /// <param name="RadiusByAngle">Working joint angle (degrees) and effective radius (m); null when not recorded.</param>
    public sealed record Cam(double? Kilograms, PiecewiseLinear? RadiusByAngle) : Resistance;

    /// <summary>A sled on a straight track: the force runs along the track, m g sin(slope); friction is left out.</summary>
    /// <param name="Kilograms">Sled and plates, kg; null takes the body mass.</param>
    /// <param name="SlopeDegrees">Slope of the track from the floor, 0 to 90 degrees; null takes the foot's own path.</param>
    public sealed record Sled(double? Kilograms, double? SlopeDegrees) : Resistance;

    /// <summary>The body itself, through its supports or as the limb's own weight.</summary>
    /// <param name="AddedKilograms">What is carried besides, kg; 0 without.</param>
    public sealed record BodyWeight(double AddedKilograms) : Resistance;
}
