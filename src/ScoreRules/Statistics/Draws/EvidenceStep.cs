using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Statistics.Draws;

/// <summary>Takes studies into account anew in each draw: the drawn scores are the prior means.</summary>
/// <param name="Update">The studies, with the doubts and likenesses of the scores.</param>
public sealed record EvidenceStep(BeliefUpdate Update) : IScoreStep
{
    /// <inheritdoc/>
    public void Apply(Draw draw, Generator generator) => Update.Move(draw.Scores);
}
