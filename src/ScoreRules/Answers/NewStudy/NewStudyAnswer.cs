using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.NewStudy;

/// <summary>What a new study of two movements would change, and what result it would need.</summary>
/// <param name="Question">The question.</param>
/// <param name="First">The movement named first.</param>
/// <param name="Second">The other.</param>
/// <param name="CanWeigh">Whether the house says how it weighs studies; else nothing was tried.</param>
/// <param name="Findings">One for each target that ranks both.</param>
public sealed record NewStudyAnswer(QuestionDefinition Question, Movement First, Movement Second, bool CanWeigh, ImmutableArray<NewStudyFinding> Findings) : Answer(Question)
{
    /// <summary>How far the study itself may be off, one standard deviation in points: an assumption, printed with the answer.</summary>
    public const double Doubt = 3;

    /// <summary>How far from what the list says now results were tried, in points to either side.</summary>
    public const double Furthest = 60;

    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.SelectMany(finding => new[] { finding.First.Row, finding.Second.Row });
}
