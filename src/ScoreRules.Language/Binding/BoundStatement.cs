namespace ScoreRules.Language.Binding;

/// <summary>A statement whose names are resolved.</summary>
/// <param name="Info">What it says about itself.</param>
public abstract record BoundStatement(StatementInfo Info);
