namespace ScoreRules.Language.Binding;

/// <summary>A reason for and a reason against that sum to zero.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Condition">Where it acts.</param>
/// <param name="InFavour">The reason for.</param>
/// <param name="Against">The reason against.</param>
/// <param name="Amount">Points each way, with their doubt; null when not said.</param>
public sealed record CancelOutDefinition(StatementInfo Info, Condition Condition, string InFavour, string Against, UncertainNumber? Amount) : ConditionalStatement(Info, Condition)
{
    /// <summary>Points each way; null when not said.</summary>
    public double? Points => Amount?.Number;
}
