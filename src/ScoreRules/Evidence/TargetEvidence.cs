using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Evidence;

/// <summary>What studies did in one target.</summary>
/// <param name="Target">The target.</param>
/// <param name="Rows">All its movements, those that are left out too, numbered on end; places in claims are places here.</param>
/// <param name="Movements">What became of each.</param>
/// <param name="Claims">What the studies say that count here, in the order of their names.</param>
public sealed record TargetEvidence(TargetDefinition Target, ImmutableArray<PlacementRow> Rows, ImmutableArray<RowEvidence> Movements, ImmutableArray<StudyClaim> Claims)
{
    /// <summary>How each claim stands against the principles alone; an "at least" that is met has no conflict.</summary>
    public ImmutableArray<PriorConflict> Conflicts { get; init; } = [];

    /// <summary>The beliefs after studies, for draws; null when no study counts here.</summary>
    internal TargetBelief? Belief { get; init; }

    /// <summary>What became of a movement.</summary>
    public RowEvidence? Of(PlacementRow row) => PlaceOf(row) is { } place ? Movements[place] : null;

    /// <summary>The place of a row among <see cref="Rows"/>; null when it is in another target.</summary>
    public int? PlaceOf(PlacementRow row) => Rows.IsEmpty || row.Target.Index != Target.Index ? null : row.Index - Rows[0].Index;

    /// <summary>How many points a movement was moved; 0 when it is not here.</summary>
    public double MoveOf(PlacementRow? row) => row is null ? 0 : Of(row)?.Moved ?? 0;
}
