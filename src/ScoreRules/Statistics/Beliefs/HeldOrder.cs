namespace ScoreRules.Statistics.Beliefs;

/// <summary>Two scores whose order is to be kept.</summary>
/// <param name="Above">The place of the one that is to lie above.</param>
/// <param name="Below">The place of the other.</param>
/// <param name="Margin">By at least how many points, 0 or more.</param>
public readonly record struct HeldOrder(int Above, int Below, double Margin);
