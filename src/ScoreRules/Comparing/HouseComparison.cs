using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Comparing;

/// <summary>What differs between two houses, or two editions of one.</summary>
/// <param name="Old">The old one.</param>
/// <param name="New">The new one.</param>
public sealed record HouseComparison(Judgement Old, Judgement New)
{
    /// <summary>Cautions added, lost, or shown beside other movements; losses first.</summary>
    public ImmutableArray<CautionChange> Cautions { get; init; } = [];

    /// <summary>What they say differently, as far as it can move a placement.</summary>
    public ImmutableArray<RuleChange> Changes { get; init; } = [];

    /// <summary>The blocks in which they differ.</summary>
    public ImmutableArray<RuleBlock> Blocks { get; init; } = [];

    /// <summary>Tiers that have another name at the same place.</summary>
    public ImmutableArray<(TierDefinition Old, TierDefinition New)> RenamedTiers { get; init; } = [];

    /// <summary>Targets that only the old one has.</summary>
    public ImmutableArray<TargetDefinition> GoneTargets { get; init; } = [];

    /// <summary>Targets that only the new one has.</summary>
    public ImmutableArray<TargetDefinition> NewTargets { get; init; } = [];

    /// <summary>The targets of both, in the order of the new one.</summary>
    public ImmutableArray<TargetComparison> Targets { get; init; } = [];

    /// <summary>Whether nothing differs that a reader of the lists would see.</summary>
    public bool IsEmpty => Cautions.IsEmpty && RenamedTiers.IsEmpty && GoneTargets.IsEmpty && NewTargets.IsEmpty && Targets.All(target => target.Changes.IsEmpty);
}
