using System.Collections.Immutable;

namespace ScoreRules.Answers.Kit;

/// <summary>Kit that could be bought, and what it adds.</summary>
/// <param name="Kit">The kit, by name.</param>
/// <param name="Rises">Lists whose first choice rises, largest rise first.</param>
public sealed record Purchase(ImmutableArray<string> Kit, ImmutableArray<PurchaseRise> Rises)
{
    /// <summary>Points that it adds to the first choices of all lists together.</summary>
    public double Points => Rises.Sum(rise => rise.Points);
}
