namespace ScoreRules.Mechanics.Statics.Curves;

/// <summary>The greatest moment of a curve.</summary>
/// <param name="AngleDegrees">Where, degrees of the working joint.</param>
/// <param name="Moment">How great, N m.</param>
public readonly record struct PeakMoment(double AngleDegrees, double Moment);
