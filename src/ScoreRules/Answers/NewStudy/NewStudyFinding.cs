using System.Collections.Immutable;
using ScoreRules.Answers.Beliefs;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.NewStudy;

/// <summary>What a new study of two movements could turn in one target.</summary>
/// <param name="First">The first movement now.</param>
/// <param name="Second">The second movement now.</param>
/// <param name="Turns">The nearest results that turn something.</param>
/// <param name="IfLevel">Movements in another tier when the study finds the two level.</param>
public sealed record NewStudyFinding(Placement First, Placement Second, ImmutableArray<StudyTurn> Turns, ImmutableArray<TierMove> IfLevel);
