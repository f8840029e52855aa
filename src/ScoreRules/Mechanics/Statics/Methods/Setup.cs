using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>A mechanism with every number settled.</summary>
/// <param name="Mechanism">What was asked.</param>
/// <param name="Body">The segments.</param>
/// <param name="Start">Angles where the lift begins.</param>
/// <param name="End">Angles where it ends.</param>
/// <param name="Sense">1 where the target raises the angle, -1 where it lowers it.</param>
internal sealed record Setup(Mechanism Mechanism, BodyDimensions Body, JointAngles Start, JointAngles End, double Sense)
{
    /// <summary>Force of the load on a free hand or foot.</summary>
    public Pull Load { get; init; } = Pull.None;

    /// <summary>Force of the supported body on a hand that holds on.</summary>
    public Pull Support { get; init; } = Pull.None;

    /// <summary>Size of the load for one arm or leg, N.</summary>
    public double LoadNewtons { get; init; }

    /// <summary>Body weight through one supporting arm or leg, N.</summary>
    public double BodyNewtons { get; init; }

    /// <summary>Radius of a cam by angle; null for all else.</summary>
    public PiecewiseLinear? Cam { get; init; }

    public JointMotion Working => Mechanism.WorkingJoint;
}
