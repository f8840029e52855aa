namespace ScoreRules.Language.Binding;

/// <summary>A caution, shown before praise. Where its condition cannot be told it is shown, marked so.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Condition">Where it applies.</param>
/// <param name="Text">The message.</param>
/// <param name="Severity">How serious it is.</param>
/// <param name="Place">Where it is shown.</param>
public sealed record CautionDefinition(StatementInfo Info, Condition Condition, string Text, CautionSeverity Severity, CautionPlace Place) : ConditionalStatement(Info, Condition);
