using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Order;

/// <summary>Why one movement stands above another, for each target that both train.</summary>
/// <param name="Question">The question.</param>
/// <param name="First">The movement named first.</param>
/// <param name="Second">The other.</param>
/// <param name="Findings">One for each target.</param>
public sealed record OrderAnswer(QuestionDefinition Question, Movement First, Movement Second, ImmutableArray<OrderFinding> Findings) : Answer(Question)
{
    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.SelectMany(finding => new[] { finding.First.Row, finding.Second.Row });
}
