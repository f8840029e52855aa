using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Kit;

/// <summary>What is lost without some kit, list by list.</summary>
/// <param name="Question">The question.</param>
/// <param name="Profile">The profile through whose kit it is seen; null for all kit there is.</param>
/// <param name="Kit">The kit taken away, by name.</param>
/// <param name="Findings">One for each list.</param>
public sealed record LossAnswer(QuestionDefinition Question, ProfileDefinition? Profile, ImmutableArray<string> Kit, ImmutableArray<LossFinding> Findings) : Answer(Question)
{
    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.Where(finding => finding.ShowsAtTheTop).SelectMany(finding => finding.Before.Concat(finding.After)).Select(placement => placement.Row);
}
