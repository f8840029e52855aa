using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.WhyNot;

/// <summary>Why a rule or called fact does not hold for a movement, for each target it trains.</summary>
/// <param name="Question">The question.</param>
/// <param name="Movement">The movement.</param>
/// <param name="Findings">One for each target.</param>
public sealed record WhyNotAnswer(QuestionDefinition Question, Movement Movement, ImmutableArray<WhyNotFinding> Findings) : Answer(Question)
{
    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.Select(finding => finding.Explained.Row);
}
