using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Profiles;
using ScoreRules.Tiering;

namespace ScoreRules.Choosing;

/// <summary>A few movements that go together, or why there are none.</summary>
/// <param name="Request">What was asked for.</param>
/// <param name="Problem">The same in whole numbers.</param>
/// <param name="Candidates">Who could be chosen, best rank first.</param>
/// <param name="Parts">What the choice is to serve; in the order of the weights of the problem.</param>
public sealed record Choice(ChoiceRequest Request, ChoiceProblem Problem, ImmutableArray<ChoiceCandidate> Candidates, ImmutableArray<ChoicePart> Parts)
{
    /// <summary>The movements chosen, best rank first; empty when nothing can be chosen.</summary>
    public ImmutableArray<ChosenMovement> Chosen { get; init; } = [];

    /// <summary>What they reach: the points with which each part is served, on average over all that is wanted.</summary>
    public double Points { get; init; }

    /// <summary>The best that each smaller number can reach, from 1; where no choice of that number keeps every limit, it is left out.</summary>
    public ImmutableArray<CandidateChoice> WithFewer { get; init; } = [];

    /// <summary>What taking the best one each time would reach; null when nothing can be chosen.</summary>
    public CandidateChoice? OneByOne { get; init; }

    /// <summary>Why nothing can be chosen; null when something is.</summary>
    public Obstacle? Obstacle { get; init; }

    /// <summary>Parts that no candidate serves.</summary>
    public ImmutableArray<ChoicePart> ServedByNobody { get; init; } = [];

    /// <summary>Parts that a candidate could serve and the choice does not.</summary>
    public ImmutableArray<ChoicePart> LeftOut { get; init; } = [];

    /// <summary>For a week: each major muscle group with the movements chosen for it; none where the catalogue has none.</summary>
    public ImmutableArray<(MajorGroup Group, ImmutableArray<Movement> TrainedBy)> MajorGroups { get; init; } = [];

    /// <summary>The rankings behind it.</summary>
    public ImmutableArray<TargetRanking> Rankings { get; init; } = [];

    /// <summary>The same as a profile sees them; empty without a profile.</summary>
    public ImmutableArray<PersonalRanking> Personal { get; init; } = [];

    /// <summary>Movements that a sum could not count, because nobody recorded the number; they are not offered.</summary>
    public ImmutableArray<(Movement Movement, AttributeDefinition Attribute)> NotTold { get; init; } = [];

    /// <summary>The rows of the movements chosen.</summary>
    public IEnumerable<PlacementRow> Rows => Chosen.SelectMany(chosen => chosen.Candidate.Placements).Select(placement => placement.Row);
}
