using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Beliefs;

/// <summary>Which placements rest on one statement.</summary>
/// <param name="Question">The question.</param>
/// <param name="Findings">One for each statement taken out, in the order of the house.</param>
/// <param name="Placements">How many placements there are in the lists asked about, those left out included.</param>
public sealed record BeliefAnswer(QuestionDefinition Question, ImmutableArray<BeliefFinding> Findings, int Placements) : Answer(Question)
{
    /// <summary>Placements that change their tier with at least one of the statements.</summary>
    public int Fragile => Findings.SelectMany(finding => finding.Moves).Select(move => move.Row.Index).Distinct().Count();

    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Findings.SelectMany(finding => finding.Moves).Select(move => move.Row);
}
