namespace ScoreRules.Mechanics.Muscles;

/// <summary>Length of a muscle, or of several together, in a posture.</summary>
/// <param name="Anatomical">Mean of the normalised lengths over the ranges of the data; see <see cref="PartLength.Normalised"/>.</param>
/// <param name="Practical">
/// 0 at the shortest and 1 at the longest length that movements reach, a fixed range; clamped to 0 to 1, so that a posture beyond the
/// range counts as its end.
/// </param>
/// <param name="Worst">The angle furthest outside of the range of the data.</param>
/// <param name="OffSagittalDegrees">See <see cref="PartLength.OffSagittalDegrees"/>; the largest of all parts.</param>
public readonly record struct MuscleLength(double Anatomical, double Practical, Excess Worst, double OffSagittalDegrees);
