namespace ScoreRules.Language.Binding;

/// <summary>Facts that contradict one another: a movement for which the condition holds is an error in the catalogue.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Condition">The contradiction.</param>
public sealed record RefusalDefinition(StatementInfo Info, Condition Condition) : ConditionalStatement(Info, Condition);
