using System.Collections.Immutable;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Explanation;

/// <summary>A called fact of a movement: whether it holds, and by which statement.</summary>
/// <param name="Name">Name of the fact.</param>
/// <param name="Verdict">Whether it holds, does not, or cannot be told.</param>
/// <param name="Ways">Each statement that could have made it, with what was found.</param>
public sealed record CalledFactExplanation(string Name, Verdict Verdict, ImmutableArray<(CallDefinition Call, ConditionTrace Trace)> Ways);
