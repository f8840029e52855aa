namespace ScoreRules.Mechanics.Bodies;

/// <summary>How far a joint goes one way.</summary>
/// <param name="Motion">Which motion.</param>
/// <param name="IsUpper">Whether the limit is at the positive end.</param>
/// <param name="UsualDegrees">The value tables recommend, as the angle of the motion, degrees.</param>
/// <param name="WidestDegrees">The widest value any opened source gives, degrees; what lies beyond is refused.</param>
/// <param name="Source">Where both come from.</param>
public sealed record JointLimit(JointMotion Motion, bool IsUpper, double UsualDegrees, double WidestDegrees, string Source)
{
    /// <summary>Degrees left before the widest value; negative beyond it.</summary>
    /// <param name="degrees">An angle of the motion.</param>
    public double LeftOf(double degrees) => IsUpper ? WidestDegrees - degrees : degrees - WidestDegrees;

    /// <summary>Whether an angle lies past the usual value.</summary>
    /// <param name="degrees">An angle of the motion.</param>
    public bool IsPastUsual(double degrees) => IsUpper ? degrees > UsualDegrees : degrees < UsualDegrees;
}
