using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>A movement with one input changed.</summary>
/// <param name="Mechanism">The movement.</param>
/// <param name="Moves">The motion whose angle was changed, where it was one.</param>
internal readonly record struct Variation(Mechanism Mechanism, JointMotion? Moves);
