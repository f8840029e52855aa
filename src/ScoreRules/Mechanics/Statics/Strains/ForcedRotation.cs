namespace ScoreRules.Mechanics.Statics.Strains;

/// <summary>What a fixed handle forces.</summary>
/// <param name="RotationDegrees">Supination the handle asks for, -180 to 180 degrees; pronation is negative.</param>
/// <param name="BeyondDegrees">How far that lies past the usual 80 degrees of the forearm; wrist and shoulder must give this. 0 or more.</param>
/// <param name="WristTiltDegrees">Side tilt of the fist, 0 to 90 degrees.</param>
public sealed record ForcedRotation(double RotationDegrees, double BeyondDegrees, double WristTiltDegrees);
