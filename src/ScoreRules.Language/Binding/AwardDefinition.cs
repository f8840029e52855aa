namespace ScoreRules.Language.Binding;

/// <summary><c>give</c> or <c>take</c>: points added or (negative) taken.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Condition">Where it acts.</param>
/// <param name="Points">Points, negative for <c>take</c>.</param>
/// <param name="Spread">One standard deviation of doubt, 0 when none was said.</param>
public sealed record AwardDefinition(StatementInfo Info, Condition Condition, double Points, double Spread) : ConditionalStatement(Info, Condition);
