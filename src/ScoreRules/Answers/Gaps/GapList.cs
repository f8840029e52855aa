using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Gaps;

/// <summary>What one list does not hold.</summary>
/// <param name="Target">The target.</param>
/// <param name="Best">The movements with the most points, best first.</param>
/// <param name="More">How many more there are.</param>
/// <param name="Refused">How many are left aside because their facts would contradict one another.</param>
public sealed record GapList(TargetDefinition Target, ImmutableArray<GapFinding> Best, int More, int Refused);
