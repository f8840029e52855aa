using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Figures;

/// <summary>A limb as a line through its joints.</summary>
/// <param name="Joints">From the trunk outwards, m; an arm: shoulder, elbow, wrist, grip; a leg: hip, knee, ankle, heel, toes.</param>
/// <param name="IsStated">Whether the movement states its angles; else it is placed for looks only.</param>
public sealed record LimbLine(ImmutableArray<Vector3> Joints, bool IsStated);
