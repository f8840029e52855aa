namespace ScoreRules.Language.Binding;

/// <summary>A statement that acts where a condition holds.</summary>
/// <param name="Info">What it says about itself.</param>
/// <param name="Condition">Where it acts.</param>
public abstract record ConditionalStatement(StatementInfo Info, Condition Condition) : BoundStatement(Info);
