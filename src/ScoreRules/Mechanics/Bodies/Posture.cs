using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Bodies;

/// <summary>The angles of a body at one instant.</summary>
/// <param name="Degrees">Angle of each stated motion, degrees; what is not stated is 0, the anatomical position.</param>
public sealed record Posture(ImmutableDictionary<JointMotion, double> Degrees)
{
    /// <summary>Standing upright, arms hanging, palms towards the thighs.</summary>
    public static Posture Anatomical { get; } = new(ImmutableDictionary<JointMotion, double>.Empty);

    /// <summary>Angle of a motion, degrees.</summary>
    public double this[JointMotion motion] => Degrees.GetValueOrDefault(motion);

    /// <summary>The same posture with one angle set.</summary>
    /// <param name="motion">Which motion.</param>
    /// <param name="degrees">Its angle, degrees.</param>
    public Posture With(JointMotion motion, double degrees) => new(Degrees.SetItem(motion, degrees));
}
