using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Guarding;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Audit;

/// <summary>Placements that other placements contradict, list by list, and expectations that fail.</summary>
/// <param name="Question">The question.</param>
/// <param name="Findings">One for each list.</param>
/// <param name="Failed">Expectations of the house that do not hold.</param>
public sealed record AuditAnswer(QuestionDefinition Question, ImmutableArray<AuditFinding> Findings, ImmutableArray<ExpectationResult> Failed) : Answer(Question)
{
    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.SelectMany(finding =>
        finding.Dominance.SelectMany(pair => new[] { pair.Better.Row, pair.Above.Row })
            .Concat(finding.Tested.SelectMany(tested => new[] { tested.Better.Row, tested.Above.Row })).Concat(finding.Residuals.Select(residual => residual.Placement.Row)));
}
