namespace ScoreRules.Statistics.Draws;

/// <summary>What a value would be if its rating were one step off.</summary>
/// <param name="Thing">Whose rating.</param>
/// <param name="Criterion">On which criterion.</param>
/// <param name="StepDown">By how much the value changes one step down, in the unit of the values; 0 at the end of the scale.</param>
/// <param name="StepUp">By how much it changes one step up; 0 at the end of the scale.</param>
/// <param name="Probability">The probability of each of the two, 0 to 0.5.</param>
public readonly record struct RatingDoubt(int Thing, int Criterion, double StepDown, double StepUp, double Probability);
