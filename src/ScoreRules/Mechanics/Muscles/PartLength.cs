namespace ScoreRules.Mechanics.Muscles;

/// <summary>Length of a muscle part in a posture.</summary>
/// <param name="Metres">From origin to insertion along the part, metres. For brachioradialis: shortening from a straight elbow, so not above 0.</param>
/// <param name="Normalised">
/// 0 at the shortest and 1 at the longest length over the ranges of its angles. Not clamped; where a polynomial stands for a table it can
/// leave 0 to 1 by the error of the fit (at most 0.03, nearly always under 0.01).
/// </param>
/// <param name="First">How far its first angle was outside of its range.</param>
/// <param name="Second">How far its second angle was outside; 0 where it has none.</param>
/// <param name="OffSagittalDegrees">
/// For parts known in the sagittal plane only (those that cross shoulder and elbow): angle between the upper arm and where flexion alone
/// would put it, 0 to 180. The length is that of flexion alone.
/// </param>
public readonly record struct PartLength(double Metres, double Normalised, Excess First, Excess Second, double OffSagittalDegrees);
