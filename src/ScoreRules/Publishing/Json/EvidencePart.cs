using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What studies and judgements by another movement did to a placement; the points sum to score less principle score.</summary>
/// <param name="Tested">Whether a study that counts speaks of the movement itself.</param>
/// <param name="Pulls">What weighed studies did.</param>
/// <param name="Held">What keeping a tested order did.</param>
/// <param name="JudgementPoints">What placing it by another movement did.</param>
/// <param name="Judgement">That judgement; null without one.</param>
/// <param name="Deviation">How far the score may still be off, one standard deviation in points; null when the house does not say.</param>
/// <param name="BenchmarkMoved">Points that the benchmark moved, by which every gap of the target changes.</param>
/// <param name="WithoutEvidence">Where it would stand without any study; null when it is left out.</param>
public sealed record EvidencePart(
    bool Tested,
    ImmutableArray<PullPart> Pulls,
    ImmutableArray<PullPart> Held,
    double JudgementPoints,
    RulePart? Judgement,
    double? Deviation,
    double BenchmarkMoved,
    WithoutPart? WithoutEvidence);
