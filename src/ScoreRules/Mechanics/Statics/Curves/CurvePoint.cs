namespace ScoreRules.Mechanics.Statics.Curves;

/// <summary>Moments about the working joint at one angle, N m; positive where they oppose the target's muscles.</summary>
/// <param name="AngleDegrees">Angle of the working joint.</param>
/// <param name="Load">From what is lifted.</param>
/// <param name="Body">From body weight that goes through a support.</param>
/// <param name="Limb">From the weight of the segments that move.</param>
public readonly record struct CurvePoint(double AngleDegrees, double Load, double Body, double Limb)
{
    /// <summary>All together, N m.</summary>
    public double Moment => Load + Body + Limb;
}
