namespace ScoreRules.Mechanics.Muscles;

/// <summary>Degrees and radians.</summary>
internal static class Angles
{
    /// <summary>Radians in a degree.</summary>
    public const double Radian = Math.PI / 180;

    /// <summary>Degrees in a radian.</summary>
    public const double Degree = 180 / Math.PI;
}
