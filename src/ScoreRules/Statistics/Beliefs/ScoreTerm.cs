namespace ScoreRules.Statistics.Beliefs;

/// <summary>A score's part in what a study speaks of.</summary>
/// <param name="Score">The place of the score.</param>
/// <param name="Factor">How often it counts; below 0 when it is taken off.</param>
public readonly record struct ScoreTerm(int Score, double Factor);
