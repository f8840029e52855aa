using System.Collections.Immutable;
using ScoreRules.Tiering;

namespace ScoreRules.Comparing;

/// <summary>One movement in one target, before and after.</summary>
/// <param name="Movement">Its name, as the new house writes it (the old one for what is gone).</param>
/// <param name="Kind">What happened.</param>
/// <param name="Old">Its placement before; null where it was not ranked.</param>
/// <param name="New">Its placement now; null where it is not ranked.</param>
public sealed record PlacementChange(string Movement, PlacementChangeKind Kind, Placement? Old, Placement? New)
{
    /// <summary>The rule that left it out before; null where none did.</summary>
    public LeftOutRow? OldLeftOut { get; init; }

    /// <summary>The rule that leaves it out now; null where none does.</summary>
    public LeftOutRow? NewLeftOut { get; init; }

    /// <summary>What each block that differs contributes, the largest first; empty where the move cannot be divided.</summary>
    public ImmutableArray<BlockPart> Parts { get; init; } = [];
}
