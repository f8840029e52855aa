namespace ScoreRules.Language.Binding;

/// <summary>What a word of the house means in numbers.</summary>
/// <param name="Info">What the statement says about itself; its name is the word.</param>
/// <param name="Bound">How the number is meant.</param>
/// <param name="Number">The number.</param>
/// <param name="Unit">Its unit: points, times, %.</param>
public sealed record SayDefinition(StatementInfo Info, SayBound Bound, double Number, string? Unit) : BoundStatement(Info);
