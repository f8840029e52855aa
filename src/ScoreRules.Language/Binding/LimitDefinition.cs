namespace ScoreRules.Language.Binding;

/// <summary><c>never above</c> or <c>never below</c> a tier.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Condition">Where it acts.</param>
/// <param name="IsCap">True for <c>never above</c>.</param>
/// <param name="Tier">The tier.</param>
public sealed record LimitDefinition(StatementInfo Info, Condition Condition, bool IsCap, TierDefinition Tier) : ConditionalStatement(Info, Condition);
