namespace ScoreRules.Weighting;

/// <summary>One thing is said to be so many times as important as another.</summary>
/// <param name="First">Position of the one, from 0.</param>
/// <param name="Second">Position of the other, from 0; not the same.</param>
/// <param name="Ratio">How many times, above 0.</param>
public readonly record struct PairwiseComparison(int First, int Second, double Ratio);
