using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>How much a criterion counts, for some targets or (empty) for all.</summary>
/// <param name="Amount">Weight as written, above 0, with its doubt; weights are normalised per target. Null when it counts <c>by weights</c>.</param>
/// <param name="Targets">Targets it is for; empty for all.</param>
/// <param name="Location">Where it stands.</param>
public sealed record CriterionWeight(UncertainNumber? Amount, ImmutableArray<TargetDefinition> Targets, SourceLocation Location)
{
    /// <summary>How a weight told by the statement <c>weights</c> came about; null for one that was written as a number.</summary>
    public WeightBasis? Basis { get; init; }
}
