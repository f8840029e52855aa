using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Lift;

/// <summary>What would lift a movement to a tier, for each target it trains.</summary>
/// <param name="Question">The question.</param>
/// <param name="Movement">The movement.</param>
/// <param name="Findings">One for each target.</param>
public sealed record LiftAnswer(QuestionDefinition Question, Movement Movement, ImmutableArray<LiftFinding> Findings) : Answer(Question)
{
    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.Select(finding => finding.Explained.Row);
}
