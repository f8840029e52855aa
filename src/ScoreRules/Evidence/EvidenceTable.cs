using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>Scores after evidence, with what moved them.</summary>
/// <param name="Scores">By row: points after evidence and judgements by another movement.</param>
/// <param name="Targets">By target, in the order of the house.</param>
/// <param name="NotCounted">Studies that move nothing, with the reason, by name.</param>
public sealed record EvidenceTable(double[] Scores, ImmutableArray<TargetEvidence> Targets, ImmutableArray<NotCounted> NotCounted)
{
    /// <summary>What became of a row.</summary>
    public RowEvidence Of(PlacementRow row) => Targets[row.Target.Index].Of(row)!;

    /// <summary>Whether anything moved any score.</summary>
    public bool MovesAnything => Targets.Any(target => target.Movements.Any(movement => movement.Moved != 0));

    /// <summary>The studies that count somewhere, by name.</summary>
    public ImmutableArray<StudyDefinition> Counted => [.. Targets.SelectMany(target => target.Claims).Select(claim => claim.Study).DistinctBy(study => study.Name).OrderBy(study => study.Name, StringComparer.Ordinal)];
}
