namespace ScoreRules.Language.Binding;

/// <summary>So many movements of a choice must meet a condition.</summary>
/// <param name="Count">How many at least, from 1.</param>
/// <param name="Condition">What they must meet.</param>
public sealed record ChoiceInclude(int Count, Condition Condition);
