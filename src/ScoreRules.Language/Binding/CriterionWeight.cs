using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>How much a criterion counts, for some targets or (empty) for all.</summary>
/// <param name="Weight">Weight as written, above 0; weights are normalised per target.</param>
/// <param name="Spread">One standard deviation of doubt, 0 when none was said.</param>
/// <param name="Targets">Targets it is for; empty for all.</param>
/// <param name="Location">Where it stands.</param>
public sealed record CriterionWeight(double Weight, double Spread, ImmutableArray<TargetDefinition> Targets, SourceLocation Location);
