using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Evidence;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Explanation;

/// <summary>
/// Everything that stands behind one placement, in the fixed order of effect: given facts, called facts, criteria,
/// awards, evidence, gap, tier, limits, left out, cautions. All forms of output are made from this one tree.
/// </summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Ranking">The ranking it is part of.</param>
/// <param name="Placement">Its placement; null when it is left out.</param>
/// <param name="LeftOut">Why it is left out; null when it is ranked.</param>
public sealed record PlacementExplanation(PlacementRow Row, TargetRanking Ranking, Placement? Placement, LeftOutRow? LeftOut)
{
    /// <summary>Cautions, most serious first.</summary>
    public ImmutableArray<ShownCaution> Cautions { get; init; } = [];

    /// <summary>Called facts by name.</summary>
    public ImmutableArray<CalledFactExplanation> CalledFacts { get; init; } = [];

    /// <summary>Criteria in the order of the house.</summary>
    public ImmutableArray<CriterionExplanation> Criteria { get; init; } = [];

    /// <summary>Points from criteria.</summary>
    public double CriteriaPoints { get; init; }

    /// <summary>Total of the weights in force, as written.</summary>
    public double WeightTotal { get; init; }

    /// <summary>Points given less points taken.</summary>
    public double AwardPoints { get; init; }

    /// <summary>Score before evidence.</summary>
    public double PrincipleScore { get; init; }

    /// <summary>What studies and judgements by another movement did to it; null where none was asked.</summary>
    public RowEvidence? Evidence { get; init; }

    /// <summary>What they did to the benchmark, by which every gap of the target changes; null without one.</summary>
    public RowEvidence? BenchmarkMoved { get; init; }

    /// <summary>Its placement without any study or such judgement; null when it is left out.</summary>
    public Placement? OnPrinciple { get; init; }

    /// <summary>What became of every rule of the house, in source order; refusals are not listed.</summary>
    public ImmutableArray<RuleExplanation> Rules { get; init; } = [];

    /// <summary>All that sets it apart from the benchmark, largest first.</summary>
    public ImmutableArray<Reason> Reasons { get; init; } = [];

    /// <summary>The reasons worth telling: for, largest first.</summary>
    public ImmutableArray<Reason> For { get; init; } = [];

    /// <summary>The reasons worth telling: against, largest first.</summary>
    public ImmutableArray<Reason> Against { get; init; } = [];

    /// <summary>The rules of one kind that held.</summary>
    public IEnumerable<RuleExplanation> Held<T>()
        where T : ConditionalStatement => Rules.Where(rule => rule is { Effect: RuleEffect.Held, Rule: T });
}
