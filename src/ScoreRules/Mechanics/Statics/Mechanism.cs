using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Statics;

/// <summary>
/// A movement as mechanics sees it. Angles in degrees, lengths in metres, masses in kilograms, forces in newtons. What is
/// null is not stated: it is assumed and listed, or named as missing.
/// </summary>
public sealed record Mechanism
{
    /// <summary>The whole posture where the lifting phase begins, the trunk in the room included.</summary>
    public required Posture Start { get; init; }

    /// <summary>The whole posture where the lifting phase ends.</summary>
    public required Posture End { get; init; }

    /// <summary>Motions that move, in the order stated; pulley and anchor are measured from the first that is a joint.</summary>
    public required ImmutableArray<JointMotion> Moving { get; init; }

    /// <summary>The joint the moment is taken about; it follows the target, not the movement.</summary>
    public required JointMotion WorkingJoint { get; init; }

    /// <summary>Which free body is used; <see cref="Choosing.MethodChoice"/> finds it from words.</summary>
    public required MomentMethod Method { get; init; }

    /// <summary>What makes the force.</summary>
    public required Resistance Resistance { get; init; }

    /// <summary>Where it acts.</summary>
    public required LoadPoint LoadPoint { get; init; }

    /// <summary>Whose body.</summary>
    public Person Person { get; init; } = Person.Default;

    /// <summary>Which way the target turns the joint; null takes the direction of the lifting phase.</summary>
    public TargetSide? Target { get; init; }

    /// <summary>Arms or legs that share the load and the body's weight: 1 or 2. Moments are those of one.</summary>
    public int SharedBy { get; init; } = 1;

    /// <summary>Part of the body's weight that goes through the supporting hands or feet, 0 to 1; null takes 1, and 0 where the load sits on foot or thigh.</summary>
    public double? BodyShare { get; init; }

    /// <summary>Where the floor or platform pushes, along the foot from the ankle, m; null takes the usual place of the method.</summary>
    public double? FootLineMetres { get; init; }

    /// <summary>Height of the supported foot over the supported shoulders, m; when stated, a bridge's trunk pitch follows from it.</summary>
    public double? FootSupportMetres { get; init; }

    /// <summary>The ball of the foot; null takes <see cref="Statics.BallOfFoot.Default"/>.</summary>
    public BallOfFoot? BallOfFoot { get; init; }

    /// <summary>Direction of a handle that cannot turn, in the room (a straight bar: 0, 0, 1); null for a free handle.</summary>
    public Vector3? FixedHandle { get; init; }

    /// <summary>Whether a pad carries the upper arm.</summary>
    public bool IsUpperArmSupported { get; init; }

    /// <summary>Whether rails, a rear foot or a hand keep a standing body from falling, so that it need not balance over the working foot.</summary>
    public bool IsHeldUpright { get; init; }

    /// <summary>Whether a pad or bench carries the trunk.</summary>
    public bool IsTrunkSupported { get; init; }
}
