using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Sore;

/// <summary>What a sore joint costs, list by list. Judged for somebody who told of it, so that what comes first then is shown first.</summary>
/// <param name="Question">The question.</param>
/// <param name="Joint">The joint.</param>
/// <param name="Stress">The rating of how much a movement loads it.</param>
/// <param name="Findings">One for each list.</param>
public sealed record SoreAnswer(QuestionDefinition Question, string Joint, AttributeDefinition Stress, ImmutableArray<SoreFinding> Findings) : Answer(Question)
{
    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.SelectMany(finding => new[] { finding.Left, finding.Cousin }.OfType<Tiering.Placement>()).Select(placement => placement.Row);
}
