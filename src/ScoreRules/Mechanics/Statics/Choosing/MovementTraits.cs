using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Choosing;

/// <summary>What a movement says about itself in the words of the rule vocabulary, as far as the choice of a method needs it.</summary>
/// <param name="MovementPattern">Such as "squat" or "elbow flexion".</param>
/// <param name="ResistanceType">Such as "free weight", "sled" or "body weight".</param>
/// <param name="LineOfPull">Such as "gravity" or "along track".</param>
/// <param name="KineticChain">"open" or "closed".</param>
/// <param name="WorkingJoint">The joint the target works at.</param>
/// <param name="Moving">Motions that move.</param>
public sealed record MovementTraits(
    string MovementPattern,
    string ResistanceType,
    string LineOfPull,
    string KineticChain,
    JointMotion WorkingJoint,
    ImmutableArray<JointMotion> Moving)
{
    /// <summary>The posture the set starts in, such as "supine"; empty when not stated.</summary>
    public string BodyPosition { get; init; } = "";
}
