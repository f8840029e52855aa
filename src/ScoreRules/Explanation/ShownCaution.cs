using ScoreRules.Language.Binding;

namespace ScoreRules.Explanation;

/// <summary>A caution that is shown.</summary>
/// <param name="Caution">The caution.</param>
/// <param name="IsUndecided">Whether it is shown because its condition could not be told.</param>
public sealed record ShownCaution(CautionDefinition Caution, bool IsUndecided);
