using System.Collections.Immutable;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Kit;

/// <summary>A placement with the kit that its movement needs.</summary>
/// <param name="Placement">The placement.</param>
/// <param name="Needed">Codes of the kit it needs, all of it; empty when it needs none, or when that is not recorded.</param>
internal readonly record struct KitNeed(Placement Placement, ImmutableArray<int> Needed)
{
    /// <summary>Whether it can be done with some kit.</summary>
    public bool IsPossible(ImmutableHashSet<int> kit) => Needed.All(kit.Contains);
}
