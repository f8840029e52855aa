using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Change;

/// <summary>What judging again found for a movement with some facts supposed to be different.</summary>
/// <param name="Changes">What was supposed.</param>
/// <param name="Row">Its row in the judgement with that supposition.</param>
/// <param name="Placement">Where it stands then; null when it is left out then.</param>
/// <param name="Judgement">The judgement with that supposition.</param>
public sealed record Supposed(ImmutableArray<FactChange> Changes, PlacementRow Row, Placement? Placement, Judgement Judgement)
{
    /// <summary>How large the changes are together, in steps.</summary>
    public double Size => Changes.Sum(change => change.Size);

    /// <summary>Whether a gym can arrange all of it.</summary>
    public bool GymCanChange => Changes.All(change => change.GymCanChange);

    /// <summary>Whether the facts then contradict one another, so that there can be no such movement.</summary>
    public bool IsRefused => Judgement.Ruleset.Refusals.Any(refusal => Judgement.Inferred!.Outcome(refusal).Effective.Contains(Row.Index));
}
