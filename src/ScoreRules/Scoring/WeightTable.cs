using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Scoring;

/// <summary>The weights told for one target.</summary>
/// <param name="target">The target; null in a house that has none.</param>
/// <param name="inForce">The statements that hold for it.</param>
internal sealed class WeightTable(TargetDefinition? target, ImmutableArray<WeightsDefinition> inForce)
{
    private readonly Dictionary<string, ToldWeight> told = new(StringComparer.Ordinal);

    /// <summary>The target; null in a house that has none.</summary>
    public TargetDefinition? Target => target;

    /// <summary>The statements that hold for it.</summary>
    public ImmutableArray<WeightsDefinition> InForce => inForce;

    /// <summary>The line of a criterion that is in force for the target, or null.</summary>
    public CriterionWeight? LineOf(CriterionDefinition? criterion) => criterion is null ? null
        : target is null ? criterion.Weights.FirstOrDefault(line => line.Targets.IsEmpty)
        : ScopeResolution.For(target, criterion.Weights, line => line.Targets);

    /// <summary>The weight told for a criterion, or null.</summary>
    public ToldWeight? Of(string criterion) => told.GetValueOrDefault(NameText.Key(criterion));

    /// <summary>Enters a weight; the one entered before, when there is one, stays.</summary>
    public ToldWeight? Enter(string criterion, ToldWeight weight) => told.TryAdd(NameText.Key(criterion), weight) ? null : Of(criterion);
}
