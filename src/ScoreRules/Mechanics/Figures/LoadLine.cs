using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Figures;

/// <summary>Where a load acts on a body, and which way it pulls.</summary>
/// <param name="At">Where, m.</param>
/// <param name="Direction">Which way, length 1.</param>
/// <param name="Kind">What pulls or pushes.</param>
public sealed record LoadLine(Vector3 At, Vector3 Direction, LoadKind Kind)
{
    /// <summary>Whether its lever on the working joint is the distance of the joint from this line: not where floor or supports carry part of it.</summary>
    public bool HasLever { get; init; }
}
