namespace ScoreRules.Language.Binding;

/// <summary><c>give</c> or <c>take</c>: points added or (negative) taken.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Condition">Where it acts.</param>
/// <param name="Amount">Points with their doubt, negative for <c>take</c>.</param>
public sealed record AwardDefinition(StatementInfo Info, Condition Condition, UncertainNumber Amount) : ConditionalStatement(Info, Condition)
{
    /// <summary>Points, negative for <c>take</c>.</summary>
    public double Points => Amount.Number;
}
