using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A placement.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="Rank">Its rank, from 1.</param>
/// <param name="Tied">Whether it shares the rank.</param>
/// <param name="Tier">Its tier.</param>
/// <param name="TierBeforeLimits">The tier its points alone would give.</param>
/// <param name="Score">Its score.</param>
/// <param name="PrincipleScore">Its score before evidence.</param>
/// <param name="Gap">Points above the benchmark; null without one.</param>
/// <param name="Verdict">The verdict as a sentence.</param>
/// <param name="ReasonsFor">All reasons for it against the benchmark, largest first.</param>
/// <param name="ReasonsAgainst">All reasons against it, largest first.</param>
/// <param name="Cautions">Its cautions, most serious first.</param>
/// <param name="Evidence">What studies did to it.</param>
/// <param name="Certainty">Where it lands when all that the authors admit is tried out; null when that was not tried.</param>
/// <param name="Trail">The whole trail; only in the form of one explanation.</param>
public sealed record PlacementPart(
    string Movement,
    int Rank,
    bool Tied,
    string Tier,
    string TierBeforeLimits,
    double Score,
    double PrincipleScore,
    double? Gap,
    string Verdict,
    ImmutableArray<ReasonPart> ReasonsFor,
    ImmutableArray<ReasonPart> ReasonsAgainst,
    ImmutableArray<CautionPart> Cautions,
    EvidencePart? Evidence,
    CertaintyPart? Certainty,
    TrailPart? Trail);
