using System.Collections.Immutable;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Mechanics.Statics.Curves;

namespace ScoreRules.Mechanics.Statics;

/// <summary>What statics can say about a movement.</summary>
/// <param name="Mechanism">What was asked.</param>
/// <param name="Curve">The moment curve, or null when an input is missing or was refused.</param>
/// <param name="Inputs">Each number used, with its origin, in a fixed order.</param>
/// <param name="Missing">What nobody stated, and what it would give.</param>
/// <param name="Assumptions">What the method takes for granted, one sentence each.</param>
/// <param name="Findings">What the checks object to.</param>
public sealed record MomentProfile(
    Mechanism Mechanism,
    MomentCurve? Curve,
    ImmutableArray<InputUse> Inputs,
    ImmutableArray<MissingInput> Missing,
    ImmutableArray<string> Assumptions,
    ImmutableArray<MechanicsFinding> Findings);
