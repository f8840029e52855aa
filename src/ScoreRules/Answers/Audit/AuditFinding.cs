using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Audit;

/// <summary>What contradicts what in one list.</summary>
/// <param name="Target">The target.</param>
/// <param name="Dominance">Movements below others that are nowhere better.</param>
/// <param name="Residuals">Movements far from what their cousins suggest.</param>
public sealed record AuditFinding(TargetDefinition Target, ImmutableArray<DominanceFinding> Dominance, ImmutableArray<ResidualFinding> Residuals)
{
    /// <summary>Orders that a study tested and that the list does not keep.</summary>
    public ImmutableArray<TestedOrder> Tested { get; init; } = [];
}
