namespace ScoreRules.Mechanics.Statics.Curves;

/// <summary>A stretch of the range, in the order of the lifting phase.</summary>
/// <param name="FromDegrees">Where it begins.</param>
/// <param name="ToDegrees">Where it ends.</param>
public readonly record struct AngleSpan(double FromDegrees, double ToDegrees);
