using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Evidence;
using ScoreRules.Explanation;
using ScoreRules.Guarding;
using ScoreRules.Houses;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Modelling;
using ScoreRules.Scoring;
using ScoreRules.Tiering;

namespace ScoreRules;

/// <summary>What came of judging a house. With errors there are findings but no rankings.</summary>
/// <param name="Sources">The files judged.</param>
/// <param name="Ruleset">The house with its names resolved.</param>
/// <param name="Catalogue">The movements.</param>
/// <param name="Findings">All findings, by place.</param>
public sealed record Judgement(HouseSources Sources, BoundRuleset Ruleset, MovementCatalogue Catalogue, ImmutableArray<Diagnostic> Findings)
{
    /// <summary>The rankings, in the order of the targets; empty when an error stopped them.</summary>
    public ImmutableArray<TargetRanking> Rankings { get; init; } = [];

    /// <summary>Explains placements; null when an error stopped the ranking.</summary>
    public Explainer? Explainer { get; init; }

    /// <summary>What the rules found; null when an error stopped them.</summary>
    public InferenceResult? Inferred { get; init; }

    /// <summary>Scores on principle, by criterion; null when an error stopped the ranking.</summary>
    public ScoreTable? Scores { get; init; }

    /// <summary>What studies did; null when an error stopped the ranking.</summary>
    public EvidenceTable? Evidence { get; init; }

    /// <summary>What mechanics derives for its movements; null when an error stopped the ranking.</summary>
    public DerivedFactSource? Derived { get; init; }

    /// <summary>The profile it was judged for, or null.</summary>
    public ProfileDefinition? Profile { get; init; }

    /// <summary>What became of the expectations.</summary>
    public ImmutableArray<ExpectationResult> Expectations { get; init; } = [];

    /// <summary>Warnings that the authors accepted; they are not among the findings.</summary>
    public ImmutableArray<AcceptedFinding> Accepted { get; init; } = [];

    /// <summary>Whether there are errors.</summary>
    public bool HasErrors => Findings.Any(finding => finding.Severity == Severity.Error);
}
